import {
  english,
  inMillimetres,
  type Language,
  type Metres,
  metres,
  millimetres,
  noteName,
} from '@becket/core';
import {
  canonicalText,
  findingGravities,
  type Job,
  type Place,
  type repairStates,
  type SurveyThing,
  surveyThingNames,
  surveyThings,
} from '@becket/journal';

export type Finding = Job['findings'][number];
type Seen = Extract<Finding['answer'], { is: 'seen' }>;

/**
 * What became of a line of the survey. *Not looked at again* and *could not be seen now* are no news of the piano; *new* is
 * only said of what was looked at before, there or elsewhere.
 */
export type SurveyChange =
  | 'grew'
  | 'graver'
  | 'as before'
  | 'reads shorter'
  | 'sound now'
  | 'still sound'
  | 'new'
  | 'not looked at before'
  | 'not looked at again'
  | 'could not be seen now'
  | 'cannot be compared';

export interface SurveyComparisonLine {
  readonly thing: SurveyThing;
  readonly label: string;
  readonly place: Place;
  /** The latest copied line of this thing and place. */
  readonly earlier: Finding | undefined;
  /** Day of the survey it was copied from. */
  readonly earlierDay: string | undefined;
  readonly now: Finding | undefined;
  readonly change: SurveyChange;
  /** By how much it is longer now, where both were measured; below 0 when it reads shorter. */
  readonly grownBy: Metres | undefined;
  /** Of a repair: whether it holds, by what was said now. Undefined where there is no repair or nothing was said. */
  readonly repair: (typeof repairStates)[number] | undefined;
  readonly sentence: string;
}

export interface SurveyComparison {
  /** Days of the surveys that were copied, the latest first; empty when there is nothing to compare with. */
  readonly days: readonly string[];
  /** In the order of the survey. */
  readonly lines: readonly SurveyComparisonLine[];
  readonly readingError: Metres;
}

/** Two readings of an extent by eye and rule agree within this. Our own figure, no source. */
export const EXTENT_READING_ERROR: Metres = millimetres(5);

/**
 * Lines copied from earlier surveys beside those of today: what grew, what is new, which repairs hold, and what was not looked
 * at again.
 *
 * Lines belong together by thing and place; several of one place by their words, then in their order. Where several earlier
 * surveys were copied the latest line of a thing and place counts.
 */
export function compareSurveys(
  job: Job,
  {
    readingError = EXTENT_READING_ERROR,
    language = english,
  }: { readonly readingError?: Metres; readonly language?: Language } = {},
): SurveyComparison {
  const copied = job.findings.filter(({ copiedFrom }) => copiedFrom !== undefined);
  const current = job.findings.filter(({ copiedFrom }) => copiedFrom === undefined);
  const names = [...new Set(job.findings.map(placeName))];
  const thingsBefore = new Set(copied.map(({ thing }) => thing));
  const lines = names.flatMap((name) => {
    const earlier = latestDay(copied.filter((one) => placeName(one) === name));
    const now = current.filter((one) => placeName(one) === name);
    return pairsOf(earlier, now).map((pair) => lineOf(pair, { thingsBefore, readingError, language }));
  });
  return {
    days: [...new Set(copied.flatMap(({ copiedFrom }) => copiedFrom ?? []))].sort().reverse(),
    lines: lines.sort(
      (a, b) =>
        surveyThingNames.indexOf(a.thing) - surveyThingNames.indexOf(b.thing) ||
        (a.place.key ?? 0) - (b.place.key ?? 0),
    ),
    readingError,
  };
}

/** The place of a finding in words: 'C4 string 2, near the agraffe', 'treble', 'the whole piano'. */
export function placeInWords({ key, string, section, point }: Place, { say }: Language = english): string {
  const stringOf = (note: string) =>
    string === undefined ? note : say('{note} string {string}', { note, string });
  const parts = [
    ...(key === undefined ? [] : [stringOf(noteName(key))]),
    ...(section === undefined ? [] : [section]),
    ...(point === undefined ? [] : [point]),
  ];
  return parts.length === 0 ? say('the whole piano') : parts.join(', ');
}

const placeName = ({ thing, place }: Finding): string => canonicalText({ thing, place });

function latestDay(copied: readonly Finding[]): Finding[] {
  const latest = copied
    .map(({ copiedFrom }) => copiedFrom!)
    .sort()
    .at(-1);
  return copied.filter(({ copiedFrom }) => copiedFrom === latest);
}

interface Pair {
  readonly earlier: Finding | undefined;
  readonly now: Finding | undefined;
}

function pairsOf(earlier: readonly Finding[], now: readonly Finding[]): Pair[] {
  const left = [...now];
  const take = (isIt: (one: Finding) => boolean): Finding | undefined => {
    const index = left.findIndex(isIt);
    return index === -1 ? undefined : left.splice(index, 1)[0];
  };
  const byWords = earlier.map((one) => ({
    earlier: one,
    now: take((other) => wordsOf(other) !== undefined && wordsOf(other) === wordsOf(one)),
  }));
  const rest = byWords.map((pair) => ({ ...pair, now: pair.now ?? take(() => true) }));
  return [...rest, ...left.map((one) => ({ earlier: undefined, now: one }))];
}

const wordsOf = ({ answer }: Finding): string | undefined =>
  answer.is === 'seen' ? answer.what.trim().toLowerCase() : undefined;

function lineOf(
  { earlier, now }: Pair,
  {
    thingsBefore,
    readingError,
    language,
  }: {
    readonly thingsBefore: ReadonlySet<SurveyThing>;
    readonly readingError: Metres;
    readonly language: Language;
  },
): SurveyComparisonLine {
  const { thing, place } = (now ?? earlier)!;
  const label = language.say(surveyThings[thing].label);
  const [was, is] = [seenOf(earlier), seenOf(now)];
  const grownBy =
    was?.extent_m === undefined || is?.extent_m === undefined
      ? undefined
      : metres(is.extent_m - was.extent_m);
  const change = changeOf(
    { earlier, now },
    { grownBy, readingError, isThingBefore: thingsBefore.has(thing) },
  );
  return {
    thing,
    label,
    place,
    earlier,
    earlierDay: earlier?.copiedFrom,
    now,
    change,
    grownBy,
    repair: is?.repair ?? (was?.repair !== undefined && now?.answer.is === 'sound' ? 'holds' : undefined),
    sentence: `${label}, ${placeInWords(place, language)}: ${sentenceOf(change, { earlier, grownBy, readingError, language })}`,
  };
}

const seenOf = (finding: Finding | undefined): Seen | undefined =>
  finding?.answer.is === 'seen' ? finding.answer : undefined;

function changeOf(
  { earlier, now }: Pair,
  {
    grownBy,
    readingError,
    isThingBefore,
  }: { readonly grownBy: Metres | undefined; readonly readingError: Metres; readonly isThingBefore: boolean },
): SurveyChange {
  if (now === undefined) return 'not looked at again';
  if (now.answer.is === 'could not be seen') return 'could not be seen now';
  if (earlier === undefined)
    return isThingBefore && now.answer.is === 'seen' ? 'new' : 'not looked at before';
  const [was, is] = [earlier.answer, now.answer];
  if (was.is === 'could not be seen' || was.is === 'does not apply' || is.is === 'does not apply')
    return 'cannot be compared';
  if (is.is === 'sound') return was.is === 'sound' ? 'still sound' : 'sound now';
  if (is.is !== 'seen') return 'cannot be compared';
  if (was.is === 'sound') return 'new';
  if (was.is !== 'seen') return 'cannot be compared';
  if (grownBy !== undefined && grownBy > readingError) return 'grew';
  if (findingGravities.indexOf(is.gravity) > findingGravities.indexOf(was.gravity)) return 'graver';
  if (grownBy !== undefined && grownBy < -readingError) return 'reads shorter';
  return 'as before';
}

function sentenceOf(
  change: SurveyChange,
  {
    earlier,
    grownBy,
    readingError,
    language,
  }: {
    readonly earlier: Finding | undefined;
    readonly grownBy: Metres | undefined;
    readonly readingError: Metres;
    readonly language: Language;
  },
): string {
  const { say, fixed } = language;
  const day = earlier?.copiedFrom === undefined ? 'unknown' : language.day(earlier.copiedFrom);
  const error = fixed(inMillimetres(readingError), 0);
  const by = grownBy === undefined ? '' : fixed(Math.abs(inMillimetres(grownBy)), 0);
  switch (change) {
    case 'grew':
      return say(
        'it grew by {by} mm{day, select, unknown {} other { since {day}}}; readings agree within {error} mm.',
        { by, day, error },
      );
    case 'graver':
      return grownBy === undefined
        ? say(
            'it is judged graver{day, select, unknown {} other { since {day}}}; it was not measured both times.',
            { day },
          )
        : say('it is judged graver{day, select, unknown {} other { since {day}}}.', { day });
    case 'as before':
      return grownBy === undefined
        ? say(
            'as before{day, select, unknown {} other { since {day}}}, by eye: it was not measured both times.',
            { day },
          )
        : say(
            'as before{day, select, unknown {} other { since {day}}}: {by} mm apart, and readings agree within {error} mm.',
            { day, by, error },
          );
    case 'reads shorter':
      return say(
        'it reads {by} mm shorter{day, select, unknown {} other { since {day}}}: was it mended, or measured another way?',
        { by, day },
      );
    case 'sound now':
      return say('it was seen{day, select, unknown {} other { on {day}}} and is sound now.', { day });
    case 'still sound':
      return say('sound, as{day, select, unknown {} other { on {day}}}.', { day });
    case 'new':
      return say('new: it was looked at before and nothing was noted.');
    case 'not looked at before':
      return say('the earlier survey does not speak of it.');
    case 'not looked at again':
      return say('noted{day, select, unknown {} other { on {day}}} and not looked at again.', { day });
    case 'could not be seen now':
      return say('it could not be seen this time.');
    case 'cannot be compared':
      return say('there is nothing to compare it with.');
  }
}
