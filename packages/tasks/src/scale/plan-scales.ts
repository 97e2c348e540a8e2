import {
  COMMON_RESCALE_RULES,
  COMMON_RESCALE_WEIGHTS,
  COMMON_SHOP_POLICY,
  COMMON_WINDING_WIRES,
  english,
  type FrontAnswer,
  type Language,
  type LoadLimit,
  latticeDiameters,
  METRIC_WIRE_SIZES,
  type Metres,
  metres,
  newtons,
  noteName,
  prepareScale,
  type RescaleWeights,
  reasonsToLeaveAlone,
  rescaleNotes,
  type ScaleNote,
  scaleFront,
  strengthTableNamed,
  US_WIRE_SIZES,
} from '@becket/core';
import { asProposedNote, hasSameWires, type ProposedNote, proposedString } from '@becket/journal';

/** How much something counts, in words that a person can choose from. */
export const emphases = { little: 0.25, 'as usual': 1, much: 4 } as const;
export type Emphasis = keyof typeof emphases;

/** What scales are planned by. Plain data: it travels to a worker, and is kept with the proposal. */
export interface PlanRules {
  /** By the name of a published table. */
  readonly strengthTable: string;
  /** Shares of the break load, 0 to 1. */
  readonly highestBreakShare: number;
  readonly lowestBreakSharePlain: number;
  readonly lowestBreakShareWound: number;
  /** How far the tension of a string may leave what was found, as a share. */
  readonly tensionRange: number;
  /** Fewest notes that one plain size serves in a row. */
  readonly minimumRun: number;
  /** Highest load of all strings together [N]; undefined for none. */
  readonly highestLoad_n?: number | undefined;
  /** Highest loads of single bridges and sections, by their names; a bridge or a section that is not here has none. */
  readonly highestLoads?: readonly PartLoadLimit[] | undefined;
  readonly wires: 'US' | 'metric';
  /** Diameters of plain wire that the shop has, to choose from alone; undefined for every listed size. */
  readonly plainInStock_m?: readonly number[] | undefined;
  /** Whether wound strings are chosen anew as well. */
  readonly woundToo: boolean;
  /** By how many notes the break from wound to plain may move; only where wound strings are chosen anew. */
  readonly breakMayMove: number;
  /** Fewest notes that one core size serves in a row; only where wound strings are chosen anew, as are the two below. */
  readonly minimumRunCore: number;
  /** Largest diameter over all, as a multiple of the core. */
  readonly largestOverCore: number;
  /** Bridges that are to have no wound strings. */
  readonly plainBridges?: readonly string[] | undefined;
  readonly evenTension: Emphasis;
  readonly evenInharmonicity: Emphasis;
  readonly fewSizeChanges: Emphasis;
  readonly fewTiedStrings: Emphasis;
  /** When the piano was made, and whether somebody says that it is historic; undefined where it is not known. */
  readonly year?: number | undefined;
  readonly isHistoric?: boolean | undefined;
  /** Notes whose string is fixed. */
  readonly pinned: readonly ProposedNote[];
}

/** The highest load of one bridge or one section. */
export interface PartLoadLimit {
  readonly of: 'bridge' | 'section';
  readonly name: string;
  readonly highest_n: number;
}

const { limits } = COMMON_SHOP_POLICY;
export const STARTING_PLAN_RULES: PlanRules = {
  strengthTable: 'ASTM A228 minimum',
  highestBreakShare: limits.highestBreakShare.value,
  lowestBreakSharePlain: limits.lowestBreakSharePlain.value,
  lowestBreakShareWound: limits.lowestBreakShareWound.value,
  tensionRange: 0.2,
  minimumRun: COMMON_RESCALE_RULES.minimumRunPlain,
  wires: 'US',
  woundToo: false,
  breakMayMove: 0,
  minimumRunCore: COMMON_RESCALE_RULES.minimumRunCore,
  largestOverCore: COMMON_RESCALE_RULES.largestOverCore,
  evenTension: 'as usual',
  evenInharmonicity: 'as usual',
  fewSizeChanges: 'as usual',
  fewTiedStrings: 'as usual',
  pinned: [],
};

/** One scale of several, from the one nearest to what was found to the smoothest. */
export interface PlannedScale {
  readonly name: string;
  readonly notes: readonly ProposedNote[];
  readonly changedNotes: number;
  /** Of plain wire, along the compass: the cores of kept wound strings differ as they were read. */
  readonly plainSizeChanges: number;
  readonly tiedStrings: number;
  /** Root mean square of the bend of tension, and of B, from note to note, as shares. */
  readonly tensionUnevenness: number;
  readonly inharmonicityUnevenness: number;
  /** Whether it is proved that nothing better exists under the same weights. */
  readonly isProved: boolean;
  /** How much smaller, as a share of its sum, a better one could be at most; 0 where none is. */
  readonly mostBetter: number;
  /** Load of all strings less what was found [N]. */
  readonly loadChange_n: number;
  /** Why the scale may better be left as it is than get this one; each a sentence. */
  readonly reasonsAgainst: readonly string[];
}

export type PlannedScales =
  | {
      readonly is: 'planned';
      readonly answers: readonly PlannedScale[];
      /** Limits that the piano itself does not keep, one sentence each: what was asked of those notes instead. */
      readonly eased: readonly string[];
    }
  | {
      readonly is: 'clash';
      /** Which limits clash, where, and what to do. */
      readonly sentence: string;
      readonly firstKey: number;
      readonly lastKey: number;
    };

/**
 * Several scales of one piano, from the one nearest to what was found to the smoothest: see `scaleFront`.
 *
 * The break share of a plain string hardly depends on its size: length and pitch decide it. Where what was found lies beyond
 * a limit already, a note need only be no worse than that, and this is said.
 *
 * @param notes   the scale that was found, in whole sizes
 * @param rules   weights, limits, wires, pins
 * @param onStep  is told how far it is
 * Throws: RangeError when there is no note or no such table.
 */
export function planScales(
  notes: readonly ScaleNote[],
  rules: PlanRules,
  onStep: (done: number, of: number) => void = () => {},
  language: Language = english,
): PlannedScales {
  const strengthTable = strengthTableNamed(rules.strengthTable);
  const weights = weightsOf(rules);
  const toChoose = notesToChoose(notes, rules);
  const prepared = prepareScale({
    notes: toChoose,
    catalogue: catalogueOf(notes, rules),
    strengthTable,
    weights,
    rules: {
      ...COMMON_RESCALE_RULES,
      minimumRunPlain: rules.minimumRun,
      // A size that the shop does not have is not kept either: kept plain strings are new wire as well.
      offersAsFound: rules.plainInStock_m === undefined,
      // Wound strings that are kept are as they are.
      ...(rules.woundToo
        ? {
            minimumRunCore: rules.minimumRunCore,
            largestOverCore: rules.largestOverCore,
            woundBridges: woundBridges(notes, rules),
          }
        : { minimumRunCore: 1, coresNeverGrow: false, largestOverCore: 100 }),
      loads: loadLimits(notes, rules),
    },
  });
  onStep(0, 1);
  const steps = scaleFront(prepared, language);
  let step = steps.next();
  while (!step.done) {
    onStep(step.value.solved, step.value.of);
    step = steps.next();
  }
  const front = step.value;
  if (!front.feasible) {
    const { reason, firstKey, lastKey } = front.clash;
    return { is: 'clash', sentence: inNoteNames(reason, language), firstKey, lastKey };
  }
  const { year, isHistoric } = rules;
  return {
    is: 'planned',
    answers: named(
      front.answers.filter(isAnother).map((answer) => ({
        ...planned(answer, notes.length),
        reasonsAgainst: reasonsToLeaveAlone(
          prepared,
          answer.answer,
          { year, isHistoric },
          undefined,
          language,
        ).map(({ sentence }) => sentence),
      })),
      language,
    ),
    eased: easedSentences(toChoose, rules, language),
  };
}

/** Every limit that is about a string of the plan: a part whose strings are all left out has no load to limit. */
function loadLimits(notes: readonly ScaleNote[], rules: PlanRules): LoadLimit[] {
  const parts = (rules.highestLoads ?? []).filter(({ of, name }) => notes.some((note) => note[of] === name));
  return [
    ...(rules.highestLoad_n === undefined
      ? []
      : [{ of: 'all' as const, highest: newtons(rules.highestLoad_n) }]),
    ...parts.map(({ of, name, highest_n }) => ({ of, name, highest: newtons(highest_n) })),
  ];
}

function woundBridges(
  notes: readonly ScaleNote[],
  { plainBridges = [] }: PlanRules,
): readonly string[] | undefined {
  if (plainBridges.length === 0) return undefined;
  return [...new Set(notes.map(({ bridge }) => bridge))].filter((bridge) => !plainBridges.includes(bridge));
}

/** Weights and limits of a plan as a proposal keeps them. */
export function keptRules(rules: PlanRules): {
  weights: Record<string, number>;
  limits: Record<string, number>;
} {
  const { tensionBend, inharmonicityBend, sizeChange, tiedString } = weightsOf(rules);
  return {
    weights: { tensionBend, inharmonicityBend, sizeChange, tiedString },
    limits: {
      highestBreakShare: rules.highestBreakShare,
      lowestBreakSharePlain: rules.lowestBreakSharePlain,
      lowestBreakShareWound: rules.lowestBreakShareWound,
      tensionRange: rules.tensionRange,
      minimumRun_notes: rules.minimumRun,
      ...(rules.highestLoad_n === undefined ? {} : { highestLoad_n: rules.highestLoad_n }),
      ...Object.fromEntries(
        (rules.highestLoads ?? []).map(({ of, name, highest_n }) => [
          `highestLoad_n ${of} ${name}`.slice(0, 60),
          highest_n,
        ]),
      ),
      ...(rules.woundToo
        ? {
            minimumRunCore_notes: rules.minimumRunCore,
            largestOverCore: rules.largestOverCore,
            ...Object.fromEntries(
              (rules.plainBridges ?? []).map((name) => [`woundNotes on bridge ${name}`.slice(0, 60), 0]),
            ),
          }
        : {}),
    },
  };
}

function weightsOf(rules: PlanRules): RescaleWeights {
  const usual = COMMON_RESCALE_WEIGHTS;
  return {
    ...usual,
    tensionBend: usual.tensionBend * emphases[rules.evenTension],
    inharmonicityBend: usual.inharmonicityBend * emphases[rules.evenInharmonicity],
    sizeChange: usual.sizeChange * emphases[rules.fewSizeChanges],
    tiedString: usual.tiedString * emphases[rules.fewTiedStrings],
  };
}

function notesToChoose(notes: readonly ScaleNote[], rules: PlanRules) {
  const limit = (of: keyof typeof limits, value: number) => ({ ...limits[of], value });
  const pins = new Map(rules.pinned.map((note) => [note.key, note]));
  return rescaleNotes(notes, {
    limits: {
      highestBreakShare: limit('highestBreakShare', rules.highestBreakShare),
      lowestBreakSharePlain: limit('lowestBreakSharePlain', rules.lowestBreakSharePlain),
      lowestBreakShareWound: limit('lowestBreakShareWound', rules.lowestBreakShareWound),
    },
    tensionDown: rules.tensionRange,
    tensionUp: rules.tensionRange,
    breakMayMove: rules.woundToo ? rules.breakMayMove : 0,
  }).map((note) => {
    const { string, key } = note.asFound;
    const found = foundShare(note, rules);
    const pin = pins.get(key);
    const isKept = string.kind === 'wound' && !rules.woundToo;
    const pinned =
      pin !== undefined ? proposedString(pin, string.speakingLength) : isKept ? string : undefined;
    return {
      ...note,
      // Rounding must not turn away what was found.
      lowestBreakShare: Math.min(note.lowestBreakShare, found * 0.999),
      highestBreakShare: Math.max(note.highestBreakShare, found * 1.001),
      ...(pinned === undefined ? {} : { pinned }),
    };
  });
}

/** Break share of what was found at a note. */
function foundShare(note: ReturnType<typeof rescaleNotes>[number], { strengthTable }: PlanRules): number {
  const { string } = note.asFound;
  const steel = string.kind === 'plain' ? string.diameter : string.coreDiameter;
  // rescaleNotes lays its range evenly round what was found, so that its middle is the tension that was found.
  const tension = (note.lowestTension + note.highestTension) / 2;
  return (
    tension / ((Math.PI / 4) * steel ** 2 * strengthTableNamed(strengthTable).strengthAt(steel).strength)
  );
}

function easedSentences(
  notes: ReturnType<typeof notesToChoose>,
  rules: PlanRules,
  { say, fixed }: Language,
): string[] {
  const isWound = (note: (typeof notes)[number]) => note.asFound.string.kind === 'wound';
  const percent = (share: number) => `${fixed(share * 100, 0)} %`;
  const cases = [
    {
      limit: say('the highest break share of {share}', { share: percent(rules.highestBreakShare) }),
      keys: notes.filter(({ highestBreakShare: share }) => share > rules.highestBreakShare),
    },
    {
      limit: say('the lowest break share of {share} for plain strings', {
        share: percent(rules.lowestBreakSharePlain),
      }),
      keys: notes.filter((note) => !isWound(note) && note.lowestBreakShare < rules.lowestBreakSharePlain),
    },
    {
      limit: say('the lowest break share of {share} for wound strings', {
        share: percent(rules.lowestBreakShareWound),
      }),
      keys: notes.filter((note) => isWound(note) && note.lowestBreakShare < rules.lowestBreakShareWound),
    },
  ];
  return cases.flatMap(({ limit, keys }) =>
    keys.length === 0
      ? []
      : [
          say(
            'What was found does not keep {limit} at {notes}: length and pitch decide that far more than size, so nothing worse than what was found is offered there.',
            { limit, notes: keys.map(({ asFound }) => noteName(asFound.key)).join(', ') },
          ),
        ],
  );
}

/** Sizes near those that were found: what lies far outside their range cannot be within the tension range either. */
function catalogueOf(notes: readonly ScaleNote[], rules: PlanRules) {
  const sizes = latticeDiameters(rules.wires === 'US' ? US_WIRE_SIZES : METRIC_WIRE_SIZES);
  const strings = notes.map(({ string }) => string);
  const near = (found: readonly number[], all: readonly Metres[]) => {
    const [low, high] = [Math.min(...found) * 0.85, Math.max(...found) * 1.15];
    return all.filter((size) => low <= size && size <= high);
  };
  const wound = strings.flatMap((string) => (string.kind === 'wound' ? [string] : []));
  const plain = strings.flatMap((string) => (string.kind === 'plain' ? [string.diameter] : []));
  return {
    plain: near(plain, rules.plainInStock_m?.map(metres) ?? sizes),
    cores: near(
      wound.map(({ coreDiameter }) => coreDiameter),
      sizes,
    ),
    windings: near(
      wound.flatMap(({ layers }) => layers.map(({ wireDiameter }) => wireDiameter)),
      COMMON_WINDING_WIRES,
    ),
  };
}

function planned({ answer, loadChange }: FrontAnswer, count: number): Omit<PlannedScale, 'reasonsAgainst'> {
  const { parts } = answer;
  const perBend = (sum: number) => Math.sqrt(sum / Math.max(1, count - 2));
  return {
    name: '',
    notes: answer.notes.map(({ key, string, isAsFound }) =>
      // A plain string that is kept is still new wire in a whole size, and not the worn wire that was read.
      asProposedNote(key, string, isAsFound && string.kind === 'wound' ? 'as found' : 'computed'),
    ),
    changedNotes: parts.changedNotes,
    plainSizeChanges: plainSizeChanges(answer.notes.map(({ string }) => string)),
    tiedStrings: parts.tiedStrings,
    tensionUnevenness: perBend(parts.tensionBend),
    inharmonicityUnevenness: perBend(parts.inharmonicityBend),
    isProved: answer.proof.isOptimal,
    // A bound below nothing says no more than that of nothing.
    mostBetter: answer.proof.isOptimal ? 0 : 1 - Math.max(0, answer.proof.lowerBound) / answer.objective,
    loadChange_n: loadChange,
  };
}

/** Whether an answer has a string that the one before it does not have: the same scale is not offered under two names. */
const isAnother = ({ answer }: FrontAnswer, index: number, all: readonly FrontAnswer[]): boolean =>
  index === 0 ||
  answer.notes.some(
    ({ string }, place) => !hasSameWires(string, all[index - 1]!.answer.notes[place]!.string),
  );

function plainSizeChanges(strings: readonly ScaleNote['string'][]): number {
  const plain = strings.flatMap((string) =>
    string.kind === 'plain' ? [Math.round(string.diameter * 1e7)] : [],
  );
  return plain.slice(1).filter((size, index) => size !== plain[index]).length;
}

function named(answers: readonly PlannedScale[], { say }: Language): PlannedScale[] {
  return answers.map((answer, index) => ({
    ...answer,
    name:
      index === 0
        ? say('as it was, tidied')
        : index === answers.length - 1
          ? say('as smooth as it goes')
          : say('between, {number} of {count}', { number: index, count: answers.length - 2 }),
  }));
}

/** 'notes 31 to 33' as 'D#3 to F3': a technician reads names, the search counts keys. */
function inNoteNames(sentence: string, { say }: Language): string {
  const number = '(\\d+)';
  const range = new RegExp(say('notes {first} to {last}', { first: number, last: number }), 'g');
  const single = new RegExp(say('note {key}', { key: number }), 'g');
  const nameOf = (key: string) => noteName(Number(key));
  return sentence
    .replace(range, (_, first: string, last: string) =>
      say('{first} to {last}', { first: nameOf(first), last: nameOf(last) }),
    )
    .replace(single, (_, key: string) => nameOf(key));
}
