import { isFound, ScheduleSearch, type SearchRules, type SearchStage } from './schedule-search.ts';
import type { NoteCandidates, StringLimitName } from './string-candidates.ts';
import type { LoadLimit, WholeScaleProblem } from './whole-scale-problem.ts';

/** A rule between notes, by a name that a sentence can use. */
export type ScheduleRuleName =
  | 'minimum run of plain sizes'
  | 'minimum run of cores'
  | 'plain sizes never grow'
  | 'cores never grow'
  | 'wound below plain';

/** Which limits leave no scale, and where. */
export interface ScaleClash {
  /** The limits of one note, the rules between notes, or the load that cannot be kept. */
  readonly limits: readonly (
    | StringLimitName
    | ScheduleRuleName
    | 'pinned string'
    | 'highest load'
    | 'nothing offered'
  )[];
  readonly firstKey: number;
  readonly lastKey: number;
  /** One sentence: what clashes, where, and what to do. */
  readonly reason: string;
}

const noteRange = (firstKey: number, lastKey: number): string =>
  firstKey === lastKey ? `note ${firstKey}` : `notes ${firstKey} to ${lastKey}`;

/** The first note that no string fits, with the limits that turned strings away. */
export function emptyNoteClash(
  problem: WholeScaleProblem,
  gathered: readonly NoteCandidates[],
): ScaleClash | undefined {
  const index = gathered.findIndex(({ candidates }) => candidates.length === 0);
  if (index < 0) return undefined;
  const { asFound, pinned } = problem.notes[index]!;
  const { key } = asFound;
  const forbidden = Object.entries(gathered[index]!.forbidden).filter(([, count]) => count > 0);
  const names = forbidden.sort((a, b) => b[1] - a[1]).map(([name]) => name as StringLimitName);
  if (names.length === 0) {
    return {
      limits: ['nothing offered'],
      firstKey: key,
      lastKey: key,
      reason: `Nothing is offered for note ${key}: it may be neither plain nor wound with the wires and bare ends given. Allow one of them there, or add wires.`,
    };
  }
  const list = names.map((name) => `the ${name}`).join(', ');
  return {
    limits: pinned === undefined ? names : ['pinned string', ...names],
    firstKey: key,
    lastKey: key,
    reason:
      pinned === undefined
        ? `No string fits note ${key}: ${list} ${names.length === 1 ? 'leaves' : 'leave'} none. Widen one of them there, or offer more sizes.`
        : `The string pinned at note ${key} breaks ${list}. Widen the limit there, or pin another string.`,
  };
}

/** The shortest run of notes that has no schedule, and each rule whose fall alone would give it one. */
export function ruleClash(
  problem: WholeScaleProblem,
  stages: readonly SearchStage[],
  rules: SearchRules,
): ScaleClash {
  // Only whether there is a schedule matters: without costs every search is short.
  const bare = stages.map(
    (stage): SearchStage => ({
      ...stage,
      own: new Float64Array(stage.count),
      tensionBend: 0,
      inharmonicityBend: 0,
    }),
  );
  const free: SearchRules = { ...rules, sizeChange: 0, tiedString: 0 };
  const isPossible = (from: number, to: number, under: SearchRules, these = bare): boolean =>
    isFound(
      new ScheduleSearch(these.slice(from, to + 1), under, {
        isStartOpen: from > 0,
        isEndOpen: to < stages.length - 1,
      }).cheapest(),
    );
  let to = 0;
  while (to < stages.length - 1 && isPossible(0, to, free)) to += 1;
  let from = to;
  while (from > 0 && isPossible(from, to, free)) from -= 1;

  const relaxations: [ScheduleRuleName, SearchRules][] = [
    ['minimum run of plain sizes', { ...free, minimumRun: [1, free.minimumRun[1]] }],
    ['minimum run of cores', { ...free, minimumRun: [free.minimumRun[0], 1] }],
    ['plain sizes never grow', { ...free, neverGrows: [false, free.neverGrows[1]] }],
    ['cores never grow', { ...free, neverGrows: [free.neverGrows[0], false] }],
  ];
  const alone = relaxations.flatMap(([name, under]) => (isPossible(from, to, under) ? [name] : []));
  const hasNoRules = isPossible(from, to, { ...free, minimumRun: [1, 1], neverGrows: [false, false] });
  const limits: ScaleClash['limits'] =
    alone.length > 0 ? alone : hasNoRules ? relaxations.map(([name]) => name) : ['wound below plain'];
  const hasPin = problem.notes.slice(from, to + 1).some(({ pinned }) => pinned !== undefined);
  const [firstKey, lastKey] = [problem.notes[from]!.asFound.key, problem.notes[to]!.asFound.key];
  const where = noteRange(firstKey, lastKey);
  const what =
    alone.length > 0
      ? `the rule '${alone.join("' or the rule '")}' clashes with what fits there`
      : hasNoRules
        ? 'the rules of runs and of sizes that never grow clash together with what fits there'
        : 'what fits there would put plain strings below wound ones';
  return {
    limits: hasPin ? [...limits, 'pinned string'] : limits,
    firstKey,
    lastKey,
    reason: `No scale goes through ${where}: ${what}${hasPin ? ', with what is pinned' : ''}. Widen a limit there, or ease the rule.`,
  };
}

/** A load that even the lightest scale exceeds. */
export function loadClash(problem: WholeScaleProblem, limit: LoadLimit, lightest: number): ScaleClash {
  const keys = problem.notes
    .filter(({ asFound }) => isUnder(limit, asFound))
    .map(({ asFound }) => asFound.key);
  const kN = (load: number): string => `${(load / 1000).toFixed(1)} kN`;
  return {
    limits: ['highest load'],
    firstKey: keys[0]!,
    lastKey: keys[keys.length - 1]!,
    reason: `The load of ${loadName(limit)} cannot be kept: the lightest scale has ${kN(lightest)}, ${kN(limit.highest)} is allowed. Raise the limit, or lower the lowest tensions.`,
  };
}

export const isUnder = (
  limit: LoadLimit,
  note: { readonly section: string; readonly bridge: string },
): boolean => limit.of === 'all' || (limit.of === 'section' ? note.section : note.bridge) === limit.name;

export const loadName = (limit: LoadLimit): string =>
  limit.of === 'all' ? 'all strings' : `the ${limit.of} '${limit.name}'`;
