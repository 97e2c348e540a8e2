import { type Language, type Message, message } from '../words/index.ts';
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

const limitWords: Readonly<Record<StringLimitName, Message>> = {
  'lowest tension': message('the lowest tension'),
  'highest tension': message('the highest tension'),
  'lowest break share': message('the lowest break share'),
  'highest break share': message('the highest break share'),
  'largest diameter over the core': message('the largest diameter over the core'),
};

const noteRange = (first: number, last: number, { say }: Language): string =>
  first === last ? say('note {key}', { key: first }) : say('notes {first} to {last}', { first, last });

/** The first note that no string fits, with the limits that turned strings away. */
export function emptyNoteClash(
  problem: WholeScaleProblem,
  gathered: readonly NoteCandidates[],
  { say }: Language,
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
      reason: say(
        'Nothing is offered for note {key}: it may be neither plain nor wound with the wires and bare ends given. Allow one of them there, or add wires.',
        { key },
      ),
    };
  }
  const list = names.map((name) => say(limitWords[name])).join(', ');
  return {
    limits: pinned === undefined ? names : ['pinned string', ...names],
    firstKey: key,
    lastKey: key,
    reason:
      pinned === undefined
        ? say(
            'No string fits note {key}: {limits} {count, plural, one {leaves} other {leave}} none. Widen one of them there, or offer more sizes.',
            { key, limits: list, count: names.length },
          )
        : say(
            'The string pinned at note {key} breaks {limits}. Widen the limit there, or pin another string.',
            { key, limits: list },
          ),
  };
}

/** The shortest run of notes that has no schedule, and each rule whose fall alone would give it one. */
export function ruleClash(
  problem: WholeScaleProblem,
  stages: readonly SearchStage[],
  rules: SearchRules,
  language: Language,
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

  const relaxations: [Exclude<ScheduleRuleName, 'wound below plain'>, SearchRules][] = [
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
  const { say } = language;
  const told = { where: noteRange(firstKey, lastKey, language), pin: hasPin ? 'yes' : 'no' };
  const reason =
    alone.length > 0
      ? say(
          'No scale goes through {where}: {rules} clashes with what fits there{pin, select, yes {, with what is pinned} other {}}. Widen a limit there, or ease the rule.',
          {
            ...told,
            rules: alone
              .map((name) => say("the rule '{rule}'", { rule: say(name) }))
              .reduce((one, other) => say('{one} or {other}', { one, other })),
          },
        )
      : hasNoRules
        ? say(
            'No scale goes through {where}: the rules of runs and of sizes that never grow clash together with what fits there{pin, select, yes {, with what is pinned} other {}}. Widen a limit there, or ease the rule.',
            told,
          )
        : say(
            'No scale goes through {where}: what fits there would put plain strings below wound ones{pin, select, yes {, with what is pinned} other {}}. Widen a limit there, or ease the rule.',
            told,
          );
  return {
    limits: hasPin ? [...limits, 'pinned string'] : limits,
    firstKey,
    lastKey,
    reason,
  };
}

/** A load that even the lightest scale exceeds. */
export function loadClash(
  problem: WholeScaleProblem,
  limit: LoadLimit,
  lightest: number,
  language: Language,
): ScaleClash {
  return {
    limits: ['highest load'],
    ...notesUnder(problem, [limit]),
    reason: language.say(
      'The load of {name} cannot be kept: the lightest scale has {lightest}, {highest} is allowed. Raise the limit, or lower the lowest tensions.',
      {
        name: loadName(limit, language),
        lightest: kilonewtons(lightest, language),
        highest: kilonewtons(limit.highest, language),
      },
    ),
  };
}

/** Loads that can be kept each alone and not together. */
export function loadsClash(
  problem: WholeScaleProblem,
  limits: readonly LoadLimit[],
  isProven: boolean,
  language: Language,
): ScaleClash {
  const { say } = language;
  const under = notesUnder(problem, limits);
  return {
    limits: ['highest load'],
    ...under,
    reason: say(
      'No scale {proof, select, proven {keeps} other {was found that keeps}} these load limits together, though each can be kept alone: {limits} ({where}). Raise one of them, or lower the lowest tensions there.',
      {
        proof: isProven ? 'proven' : 'open',
        limits: limits
          .map((limit) =>
            say('{name} at most {highest}', {
              name: loadName(limit, language),
              highest: kilonewtons(limit.highest, language),
            }),
          )
          .join(', '),
        where: noteRange(under.firstKey, under.lastKey, language),
      },
    ),
  };
}

const kilonewtons = (load: number, { fixed }: Language): string => `${fixed(load / 1000, 1)} kN`;

function notesUnder(
  { notes }: WholeScaleProblem,
  limits: readonly LoadLimit[],
): { readonly firstKey: number; readonly lastKey: number } {
  const keys = notes.flatMap(({ asFound }) =>
    limits.some((limit) => isUnder(limit, asFound)) ? [asFound.key] : [],
  );
  return { firstKey: keys[0]!, lastKey: keys[keys.length - 1]! };
}

export const isUnder = (
  limit: LoadLimit,
  note: { readonly section: string; readonly bridge: string },
): boolean => limit.of === 'all' || (limit.of === 'section' ? note.section : note.bridge) === limit.name;

export const loadName = ({ of, name }: LoadLimit, { say }: Language): string =>
  of === 'all'
    ? say('all strings')
    : say("the {of, select, section {section} other {bridge}} '{name}'", { of, name: name ?? '' });
