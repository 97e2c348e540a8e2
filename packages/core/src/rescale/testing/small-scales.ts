import { equalTemperedFrequency } from '../../pitch/index.ts';
import type { ScaleNote } from '../../scale/index.ts';
import type { PlainString, WoundString } from '../../strings/index.ts';
import { A228_MINIMUM } from '../../tables/index.ts';
import { hertz, metres, millimetres, newtons } from '../../units/index.ts';
import { type NoteCandidates, type StringCandidate, stringCandidates } from '../string-candidates.ts';
import type { WholeScaleProblem } from '../whole-scale-problem.ts';
import { seededUniform } from './seeded-uniform.ts';

/*
 * Small scales across a break, drawn at random from a seed, and the rules of a schedule written out once more as plainly as
 * they are said: what the search is held against.
 */

/** Some four to six notes round the break with a few wires each: few enough to try every schedule. */
export function randomSmallProblem(seed: number): WholeScaleProblem {
  const random = seededUniform(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const oneOf = <T>(values: readonly T[]): T => values[Math.floor(random() * values.length)]!;
  const count = Math.floor(between(3, 7));
  const firstKey = 28;
  const breakAt = Math.floor(between(0, count + 1));
  const strut = Math.floor(between(1, count + 1));
  const trichordFrom = Math.floor(between(0, count + 1));
  const bare = { bareFront: millimetres(between(10, 25)), bareBack: millimetres(between(8, 18)) };
  const notes = Array.from({ length: count }, (_, index) => {
    const key = firstKey + index;
    const speakingLength = metres(1.02 * 2 ** (-index / 14) * between(0.97, 1.03));
    const string: PlainString | WoundString =
      index < breakAt
        ? {
            kind: 'wound',
            speakingLength,
            coreDiameter: millimetres(oneOf([0.9, 0.95])),
            layers: [{ wireDiameter: millimetres(oneOf([0.15, 0.2, 0.25])), ...bare }],
          }
        : { kind: 'plain', speakingLength, diameter: millimetres(oneOf([0.95, 1, 1.05])) };
    const asFound: ScaleNote = {
      key,
      section: index < strut ? 'tenor' : 'treble',
      bridge: index < strut ? 'bass bridge' : 'long bridge',
      strings: index < trichordFrom ? 2 : 3,
      frequency: equalTemperedFrequency(key, hertz(440)),
      string,
    };
    return {
      asFound,
      lowestTension: newtons(between(350, 520)),
      highestTension: newtons(between(800, 1100)),
      lowestBreakShare: 0.2,
      highestBreakShare: between(0.5, 0.7),
      mayBePlain: random() < 0.85,
      mayBeWound: random() < 0.85,
      windingEnds: [bare],
      pinned: random() < 0.08 ? string : undefined,
    };
  });
  return {
    notes,
    catalogue: {
      plain: [0.95, 1, 1.05].map(millimetres),
      cores: [0.9, 0.95].map(millimetres),
      windings: [0.15, 0.22].map(millimetres),
    },
    strengthTable: A228_MINIMUM,
    weights: {
      tensionBend: oneOf([0, 1, 3]),
      inharmonicityBend: oneOf([0, 0.3]),
      whereUnisonsDiffer: oneOf([0, 0.1, 1]),
      tensionFromFound: oneOf([0, 0.1]),
      changedNote: oneOf([0, 0.002]),
      sizeChange: oneOf([0, 0.004, 0.05]),
      tiedString: oneOf([0, 0.003, 0.03]),
    },
    rules: {
      minimumRunPlain: oneOf([1, 2, 3]),
      minimumRunCore: oneOf([1, 2]),
      plainNeverGrows: random() < 0.7,
      coresNeverGrow: random() < 0.7,
      largestOverCore: oneOf([1.4, 2]),
      woundBridges: random() < 0.3 ? ['bass bridge'] : undefined,
      loads: [],
      offersAsFound: random() < 0.7,
      twoLayerStep: 0.02,
      innerOfOuter: 0.5,
    },
  };
}

export const candidatesOf = (problem: WholeScaleProblem): NoteCandidates[] =>
  problem.notes.map((note) => stringCandidates(problem, note));

/** Every choice of one candidate a note, limits or not. */
export function* everyChoice(
  candidates: readonly (readonly StringCandidate[])[],
  from: readonly StringCandidate[] = [],
): Generator<readonly StringCandidate[]> {
  if (from.length === candidates.length) {
    yield from;
    return;
  }
  for (const candidate of candidates[from.length]!) yield* everyChoice(candidates, [...from, candidate]);
}

/** To the nanometre: the same size in inches and in millimetres differs in its last digits. */
const wireOf = (string: PlainString | WoundString): number =>
  Math.round((string.kind === 'plain' ? string.diameter : string.coreDiameter) * 1e9);

/** Runs of one kind and wire: where each begins and how long it is. */
export function runsOf(
  chosen: readonly StringCandidate[],
): { start: number; length: number; kind: string }[] {
  const runs: { start: number; length: number; kind: string }[] = [];
  chosen.forEach(({ string }, note) => {
    const before = chosen[note - 1]?.string;
    if (before !== undefined && before.kind === string.kind && wireOf(before) === wireOf(string))
      runs[runs.length - 1]!.length += 1;
    else runs.push({ start: note, length: 1, kind: string.kind });
  });
  return runs;
}

/** Whether a choice keeps every rule between notes and every load; what fits a note by itself is not looked at. */
export function keepsRules(problem: WholeScaleProblem, chosen: readonly StringCandidate[]): boolean {
  const { rules, notes } = problem;
  const isInOrder = chosen.every(({ string }, note) => {
    const before = chosen[note - 1]?.string;
    if (before === undefined) return true;
    if (before.kind === 'plain' && string.kind === 'wound') return false;
    if (before.kind !== string.kind) return true;
    const isOneBridge = notes[note]!.asFound.bridge === notes[note - 1]!.asFound.bridge;
    const mayNotGrow = string.kind === 'plain' ? rules.plainNeverGrows : rules.coresNeverGrow && isOneBridge;
    return !(mayNotGrow && wireOf(string) > wireOf(before));
  });
  const areRunsLong = runsOf(chosen).every(
    ({ length, kind }) => length >= (kind === 'plain' ? rules.minimumRunPlain : rules.minimumRunCore),
  );
  const areLoadsKept = rules.loads.every((limit) => {
    let load = 0;
    chosen.forEach(({ tension }, note) => {
      const { asFound } = notes[note]!;
      const isUnder =
        limit.of === 'all' || (limit.of === 'section' ? asFound.section : asFound.bridge) === limit.name;
      if (isUnder) load += asFound.strings * tension;
    });
    return load <= limit.highest;
  });
  return isInOrder && areRunsLong && areLoadsKept;
}

/** The sum as it is stated, term by term. */
export function statedSum(
  problem: WholeScaleProblem,
  chosen: readonly StringCandidate[],
  foundLogs: readonly number[],
): number {
  const { weights, notes } = problem;
  let sum = 0;
  for (let note = 1; note + 1 < chosen.length; note += 1) {
    const three = [chosen[note - 1]!, chosen[note]!, chosen[note + 1]!] as const;
    const counts = new Set([note - 1, note, note + 1].map((index) => notes[index]!.asFound.strings));
    const factor = counts.size === 1 ? 1 : weights.whereUnisonsDiffer;
    const bend = (value: (candidate: StringCandidate) => number): number =>
      value(three[0]) + value(three[2]) - 2 * value(three[1]);
    sum += factor * weights.tensionBend * bend(({ logTension }) => logTension) ** 2;
    sum += factor * weights.inharmonicityBend * bend(({ logInharmonicity }) => logInharmonicity) ** 2;
  }
  chosen.forEach((candidate, note) => {
    sum += weights.tensionFromFound * (candidate.logTension - foundLogs[note]!) ** 2;
    sum += candidate.isAsFound ? 0 : weights.changedNote;
    const before = chosen[note - 1];
    if (before?.string.kind === candidate.string.kind && wireOf(before.string) !== wireOf(candidate.string))
      sum += weights.sizeChange;
  });
  // Strings of each plain run, cut at the struts: an odd count leaves one string to be tied.
  for (const { start, length, kind } of runsOf(chosen)) {
    if (kind !== 'plain') continue;
    const perSection = new Map<string, number>();
    for (let note = start; note < start + length; note += 1) {
      const { section, strings } = notes[note]!.asFound;
      perSection.set(section, (perSection.get(section) ?? 0) + strings);
    }
    for (const strings of perSection.values()) sum += weights.tiedString * (strings % 2);
  }
  return sum;
}
