import { english, type Language } from '@becket/core';
import {
  type Job,
  type SurveyPart,
  type SurveyThing,
  surveyParts,
  surveyThingNames,
  surveyThings,
  type Ulid,
} from '@becket/journal';
import type { SurveyComparison } from './compare-surveys.ts';
import { DECISION_LIMITS, LOOK_FIRST } from './decision-rules.ts';
import type { PinChoice } from './pin-choice.ts';

/** Something that nobody knows yet, and what would settle it. */
export interface StillUnknown {
  readonly what: string;
  readonly wouldSettle: string;
  /** True when a plain go should not be said without it. */
  readonly isNeededFirst: boolean;
  /** '34 %' */
  readonly figure: string | undefined;
  readonly entries: readonly Ulid[];
}

/** What is still unknown, what should be known first at the head. */
export function stillUnknown(
  job: Job,
  { choice, survey }: { readonly choice: PinChoice; readonly survey: SurveyComparison },
  language: Language = english,
): StillUnknown[] {
  return [
    ...surveyUnknowns(survey, language),
    ...torqueUnknowns(choice, language),
    ...readingUnknowns(job, language),
    ...pinUnknowns(choice, language),
  ].sort((a, b) => Number(b.isNeededFirst) - Number(a.isNeededFirst));
}

function surveyUnknowns({ lines }: SurveyComparison, { say, day }: Language): StillUnknown[] {
  const labelOf = (thing: SurveyThing) => say(surveyThings[thing].label);
  const answered = new Set(
    lines.flatMap(({ thing, now }) =>
      now !== undefined && now.answer.is !== 'could not be seen' ? [thing] : [],
    ),
  );
  const hidden = lines.filter(
    ({ thing, now }) => now?.answer.is === 'could not be seen' && !answered.has(thing),
  );
  const hiddenThings = new Set(hidden.map(({ thing }) => thing));
  const open = surveyThingNames.filter((thing) => !answered.has(thing) && !hiddenThings.has(thing));
  const known = (thing: (typeof open)[number]) => lines.find((line) => line.thing === thing)?.earlierDay;
  const first = LOOK_FIRST.filter((thing) => open.includes(thing)).map((thing): StillUnknown => {
    const earlierDay = known(thing);
    return {
      what: say('Nobody has looked for {thing}{day, select, unknown {} other { since {day}}}.', {
        thing: labelOf(thing),
        day: earlierDay === undefined ? 'unknown' : day(earlierDay),
      }),
      wouldSettle: say('Look for {thing}, with a light and with the action out.', { thing: labelOf(thing) }),
      isNeededFirst: true,
      figure: undefined,
      entries: [],
    };
  });
  const rest = (Object.keys(surveyParts) as SurveyPart[]).flatMap((part): StillUnknown[] => {
    const things = open.filter((thing) => surveyThings[thing].part === part && !LOOK_FIRST.includes(thing));
    if (things.length === 0) return [];
    return [
      {
        what: say('Not looked at yet, {part}: {things}.', {
          part: say(surveyParts[part]),
          things: things.map(labelOf).join(', '),
        }),
        wouldSettle: say('Go through this part of the survey: {part}.', { part: say(surveyParts[part]) }),
        isNeededFirst: false,
        figure: undefined,
        entries: [],
      },
    ];
  });
  const unseen = hidden.map(
    ({ thing, now }): StillUnknown => ({
      what: say('Could not be seen: {thing}.', { thing: labelOf(thing) }),
      wouldSettle: say(
        'Look for {thing} when the strings are off, and say in the estimate that it is open.',
        { thing: labelOf(thing) },
      ),
      isNeededFirst: LOOK_FIRST.includes(thing),
      figure: undefined,
      entries: [now!.entry],
    }),
  );
  return [...first, ...unseen, ...rest];
}

function torqueUnknowns(choice: PinChoice, { say }: Language): StillUnknown[] {
  const { map } = choice;
  const none = { figure: undefined, entries: [] };
  if (map.pins.length === 0)
    return [
      {
        ...none,
        what: say('No torque has been read: nothing is known of the grip of the block.'),
        wouldSettle: say('Read the torque of pins in every section, in both directions.'),
        isNeededFirst: true,
      },
    ];
  const unknown: StillUnknown[] = [];
  const withoutGrip = map.pins.filter(({ grip }) => grip === undefined);
  if (withoutGrip.length > 0)
    unknown.push({
      what: say(
        '{count} of {all} pins read have no grip: their direction, or the pull of their strings, is not known.',
        { count: withoutGrip.length, all: map.pins.length },
      ),
      wouldSettle: say('Read these pins in both directions, or slack.'),
      isNeededFirst: withoutGrip.length === map.pins.length,
      figure: say('{count} pins', { count: withoutGrip.length }),
      entries: withoutGrip.flatMap(({ readings }) => readings.map(({ entry }) => entry)),
    });
  const { zone } = map;
  if (zone !== undefined && zone.chanceMissed > DECISION_LIMITS.zoneChanceAccepted) {
    const next =
      zone.next === undefined
        ? []
        : [
            say('The next best is {note} string {string}: it leaves {chance}.', {
              note: zone.next.note,
              string: zone.next.string,
              chance: percent(zone.chanceAfterNext),
            }),
          ];
    unknown.push({
      what: say(
        'The torque sample is small: a bad zone of {size} pins in a row lies where nobody has read with a chance of {chance}.',
        { size: zone.size, chance: percent(zone.chanceMissed) },
      ),
      wouldSettle: [say('Read more pins, spread over the block.'), ...next].join(' '),
      isNeededFirst: false,
      figure: percent(zone.chanceMissed),
      entries: [],
    });
  }
  const thin = map.sections.filter(
    ({ pins, withGrip }) => pins > 0 && withGrip < Math.min(pins, DECISION_LIMITS.fewestPinsOfSection),
  );
  if (thin.length > 0)
    unknown.push({
      ...none,
      what: say('Fewer than {fewest} pins have a grip in: {sections}.', {
        fewest: DECISION_LIMITS.fewestPinsOfSection,
        sections: thin.map(({ section, withGrip }) => `${section} (${withGrip})`).join(', '),
      }),
      wouldSettle: say('Read at least {fewest} pins in each of these sections.', {
        fewest: DECISION_LIMITS.fewestPinsOfSection,
      }),
      isNeededFirst: false,
    });
  const row = onlyRowRead(choice);
  if (row !== undefined)
    unknown.push({
      ...none,
      what: say(
        'Of three strings only string {row} has been read: a crack along another row of pins would not show.',
        { row },
      ),
      wouldSettle: say(
        'Read every fifth pin instead of the same one of each note, so that every row is met.',
      ),
      isNeededFirst: false,
    });
  // Where no humidity was read at all that is told once, with the readings.
  if (map.season.withoutHumidity > 0 && map.season.lowest_percent !== undefined)
    unknown.push({
      ...none,
      what: say(
        '{count} torque readings say nothing of the air: how grip stands to the season is not known.',
        { count: map.season.withoutHumidity },
      ),
      wouldSettle: say('Read relative humidity where the piano stands, the same day.'),
      isNeededFirst: false,
    });
  return unknown;
}

/** Fewer pins on three-stringed notes say nothing of rows. Our own figure. */
const FEWEST_FOR_ROWS = 6;

/** The one string of three-stringed notes that was read, where no other was. */
function onlyRowRead({ map: { pins, field } }: PinChoice): number | undefined {
  const threefold = new Set(field.pins.filter(({ string }) => string === 3).map(({ key }) => key));
  const own = pins.filter(({ key, string }) => threefold.has(key) && string !== undefined);
  const rows = new Set(own.map(({ string }) => string));
  return own.length >= FEWEST_FOR_ROWS && rows.size === 1 ? own[0]!.string : undefined;
}

function readingUnknowns(job: Job, { say }: Language): StillUnknown[] {
  const has = (...quantities: readonly string[]) =>
    job.readings.some(({ quantity, stage }) => stage === 'as found' && quantities.includes(quantity));
  const unread = (isRead: boolean, what: string, wouldSettle: string): StillUnknown[] =>
    isRead ? [] : [{ what, wouldSettle, isNeededFirst: false, figure: undefined, entries: [] }];
  return [
    ...unread(
      has('soundboard-crown'),
      say('Crown of the soundboard has not been read.'),
      say('Read crown with a thread or a straight edge, loaded, and again with the strings off.'),
    ),
    ...unread(
      has('bearing-angle', 'bearing-rise'),
      say('Bearing has not been read.'),
      say('Read bearing in every section before the strip: afterwards it is gone.'),
    ),
    ...unread(
      has('pitch-offset'),
      say('Pitch as found has not been read.'),
      say('Read the pitch of some notes in every section: the pull of the strings follows from it.'),
    ),
    ...unread(
      has('relative-humidity') ||
        job.readings.some(({ condition }) => condition?.relativeHumidity_percent !== undefined),
      say('Relative humidity has not been read.'),
      say('Read relative humidity where the piano stands.'),
    ),
  ];
}

function pinUnknowns(
  { measured, law, lawSentence, lengthsNeed, limits, map }: PinChoice,
  { say }: Language,
): StillUnknown[] {
  const none = { isNeededFirst: false, figure: undefined, entries: [] };
  const unknown: StillUnknown[] = [];
  if (measured.length === 0)
    unknown.push({
      ...none,
      what: say('No pin diameter has been read: the size as found is not known.'),
      wouldSettle: say('Measure pins with a micrometer in every section, over the thread.'),
    });
  if (map.pins.length > 0 && law === undefined)
    unknown.push({
      ...none,
      what: lawSentence,
      wouldSettle: say('Fit test pins in the worst and in the best place before pins are ordered.'),
    });
  const need = [
    ...(limits.plateHoleDiameter === undefined ? [say('the smallest plate hole')] : []),
    ...lengthsNeed,
  ];
  if (measured.length > 0 && need.length > 0)
    unknown.push({
      ...none,
      what: say('What block and plate allow is not known: {needed}.', { needed: need.join(', ') }),
      wouldSettle: say('Measure them before pins are ordered; a hole can be measured once its pin is out.'),
    });
  return unknown;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
