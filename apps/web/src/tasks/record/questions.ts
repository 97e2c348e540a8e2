import { COMMON_SLIP_POLICIES, english, type Language, type SlipPolicy } from '@becket/core';
import type { AsFoundNote, AsFoundRecord, ReadingQuantityName, StandingReading, Ulid } from '@becket/journal';
import { doubtfulReadings } from '@becket/tasks';
import { lengthIn, type ShownUnit, unitSign } from '../../parts/length-text.ts';

const policies: Partial<Record<ReadingQuantityName, SlipPolicy>> = COMMON_SLIP_POLICIES;

/** A doubt about a value, beside its cell. It blocks nothing. */
export interface Question {
  readonly quantity: ReadingQuantityName;
  /** The reading that is doubted. */
  readonly entry: Ulid;
  readonly sentence: string;
  /** What may have been meant, SI; undefined where no slip explains it. */
  readonly suggestion_si: number | undefined;
}

interface Run {
  readonly firstKey: number;
  readonly lastKey: number;
}

/** What the questions about one quantity were worked out from, note by note, and what came of each note. */
interface Asked {
  readonly keys: readonly number[];
  readonly readings: readonly (readonly StandingReading[])[];
  readonly runs: readonly (Run | undefined)[];
  readonly questions: readonly (readonly Question[])[];
}

/** The last answers of each quantity, by language. A reading keeps its object: the same objects ask the same questions. */
const lastAsked = new WeakMap<Language, Map<ReadingQuantityName, Asked>>();
const noReadings: readonly StandingReading[] = [];

/**
 * The values in question, by key. A further reading only has its own quantity asked again, and of it the notes that are
 * near enough to be judged by it.
 */
export function questionsOf(
  { notes }: AsFoundRecord,
  language: Language = english,
): ReadonlyMap<number, readonly Question[]> {
  const runs = runsOfAlike(notes);
  const keys = notes.map(({ key }) => key);
  const runOfEach = keys.map((key) => runs.get(key));
  const asked = lastAsked.get(language) ?? new Map<ReadingQuantityName, Asked>();
  lastAsked.set(language, asked);
  for (const quantity of Object.keys(policies) as ReadingQuantityName[]) {
    const readings = notes.map(({ figures }) => figures[quantity]?.readings ?? noReadings);
    const now = { keys, readings, runs: runOfEach };
    asked.set(quantity, askAgain(quantity, now, asked.get(quantity), language));
  }
  const questions = new Map<number, readonly Question[]>();
  notes.forEach(({ key, figures }, index) => {
    const own: Question[] = [];
    for (const quantity of Object.keys(figures) as ReadingQuantityName[])
      for (const question of asked.get(quantity)?.questions[index] ?? [])
        if (!own.some((known) => known.sentence === question.sentence)) own.push(question);
    if (own.length > 0) questions.set(key, own);
  });
  return questions;
}

function askAgain(
  quantity: ReadingQuantityName,
  now: Omit<Asked, 'questions'>,
  before: Asked | undefined,
  language: Language,
): Asked {
  const { keys, readings, runs } = now;
  const isKnown = before !== undefined && isSameList(keys, before.keys);
  const changed = keys.flatMap((_, index) =>
    isKnown &&
    isSameList(readings[index]!, before.readings[index]!) &&
    isSameRun(runs[index], before.runs[index])
      ? []
      : [index],
  );
  if (changed.length === 0) return { ...now, questions: before?.questions ?? [] };
  // A reading is judged by those within reach: these notes are asked again, and heard are those within their reach.
  const reach = policies[quantity]!.reach;
  const first = changed[0]! - reach;
  const last = changed.at(-1)! + reach;
  const heard = readings.slice(Math.max(0, first - reach), last + reach + 1).flat();
  const fresh = new Map<number, Question[]>();
  const runOf = (key: number) => runs[keys.indexOf(key)];
  for (const { index, sentence, suggestion_si } of doubtfulReadings(heard, runOf, language)) {
    const { place, entry } = heard[index]!;
    const known = fresh.get(place.key!) ?? [];
    fresh.set(place.key!, [...known, { quantity, entry, sentence, suggestion_si }]);
  }
  return {
    ...now,
    questions: keys.map((key, index) =>
      isKnown && (index < first || index > last) ? before.questions[index]! : (fresh.get(key) ?? []),
    ),
  };
}

const isSameList = <T>(one: readonly T[], other: readonly T[]): boolean =>
  one === other || (one.length === other.length && one.every((thing, index) => thing === other[index]));

const isSameRun = (one: Run | undefined, other: Run | undefined): boolean =>
  one?.firstKey === other?.firstKey && one?.lastKey === other?.lastKey;

/** For each key the run of neighbouring notes of its section that are strung of the same kind: a break is no slip. */
function runsOfAlike(notes: readonly AsFoundNote[]): ReadonlyMap<number, Run> {
  const runs = new Map<number, { firstKey: number; lastKey: number }>();
  notes.forEach((note, index) => {
    const before = notes[index - 1];
    const known = before === undefined ? undefined : runs.get(before.key);
    const goesOn =
      known !== undefined &&
      before?.section === note.section &&
      before?.winding === note.winding &&
      before?.layers === note.layers;
    const run = goesOn ? known : { firstKey: note.key, lastKey: note.key };
    run.lastKey = note.key;
    runs.set(note.key, run);
  });
  return runs;
}

/** A suggested length as it would be typed: with its unit, and no more digits than tell it apart. */
export function suggestionText(length_m: number, unit: ShownUnit, { plain }: Language = english): string {
  return `${plain(Number(lengthIn(length_m, unit).toPrecision(4)))} ${unitSign(unit)}`;
}
