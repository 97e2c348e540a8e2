import { english, type Language, type Message, message, noteName } from '@becket/core';
import { type ObservedThing, observedThings } from '../facts/answer.ts';
import type { Place } from '../facts/place.ts';
import { type ReadingQuantityName, readingQuantities } from '../facts/reading-quantities.ts';
import type { Job, Section, StandingReading } from '../fold/job.ts';
import { type AsFoundNote, asFoundRecord } from '../record/as-found-record.ts';
import { measuredAnswer, notesWithoutWinding } from './measured-answer.ts';

/** What it means that a thing is missing once the strings are off. Common practice, no source. */
export const gapRanks = ['lost for ever', 'costly', 'convenient'] as const;
export type GapRank = (typeof gapRanks)[number];

/** One thing that the as-found record still lacks. */
export interface Gap {
  /** Its own name, by which it is accepted: 'wire-diameter/C#3', 'felts/bass'. */
  readonly name: string;
  readonly place: Place;
  /** What is missing, in trade words. */
  readonly what: string;
  readonly rank: GapRank;
  /** One sentence: what is missing where, what was found instead, and what it costs later. */
  readonly sentence: string;
  /** The same in parts, where many of one kind are told together: what it costs later, and what was found instead. */
  readonly cost?: string;
  readonly found?: string;
  readonly accepted?: {
    readonly by: string;
    readonly reason: string;
    readonly at: string;
    /** The entry that accepted it, by which that can be taken back. */
    readonly entry: string;
  };
}

export interface StripCheck {
  /** Every gap, the gravest rank first, then from bass to treble; accepted ones among them. */
  readonly gaps: readonly Gap[];
  readonly openGaps: readonly Gap[];
  /** True when the piano is described and no gap is open. Then, and only then, the record can be sealed. */
  readonly isPassed: boolean;
}

const rankOfQuantity: Partial<Record<ReadingQuantityName, GapRank>> = {
  'front-length': 'convenient',
  'back-length': 'convenient',
  'pin-diameter': 'costly',
  'pin-length': 'convenient',
  'pin-height': 'costly',
  'pin-coils': 'convenient',
  'pressure-bar-height': 'lost for ever',
  'strike-line-spacing': 'costly',
  'bridge-spacing': 'costly',
  'loop-to-winding': 'costly',
  'winding-length': 'costly',
};

const costOfQuantity: Partial<Record<ReadingQuantityName, Message>> = {
  'wire-diameter': message('with the wire gone only its neighbours can say what size it was.'),
  'speaking-length': message('the bridge pins may still tell it later, but not where the old string ran.'),
  'core-diameter': message('the bass string order cannot be made without it.'),
  'over-all-diameter': message('the bass string order cannot be made without it.'),
  'inner-layer-diameter': message('the bass string order cannot be made without it.'),
  'bare-front': message('the winding of the new string would start in the wrong place.'),
  'bare-back': message('the winding of the new string would end in the wrong place.'),
  'front-length': message('the cut list then rests on an assumed length.'),
  'back-length': message('the cut list then rests on an assumed length.'),
  'pin-diameter': message('the next pin size cannot be chosen from it.'),
  'pin-length': message('the length of the new pins has to be found by trial.'),
  'pin-height': message('how far new pins are driven has to be guessed once the old ones are out.'),
  'pin-coils': message('the cut list then rests on an assumed number of coils.'),
  'pressure-bar-height': message('once the bar is loosened nobody can say how far it bent the strings.'),
  'strike-line-spacing': message('the new strings may not lie where the hammers strike.'),
  'bridge-spacing': message('new bridge pins would have to be set out by guess.'),
  'loop-to-winding': message('the maker of the bass strings would have to guess where the winding starts.'),
  'winding-length': message('the maker of the bass strings would have to guess where the winding ends.'),
};

/** Things looked at section by section; an observation without a section speaks for the whole piano. */
const neededThings: readonly { thing: ObservedThing; rank: GapRank; cost: Message }[] = [
  {
    thing: 'loops',
    rank: 'lost for ever',
    cost: message('which strings shared a wire cannot be seen once they are off.'),
  },
  {
    thing: 'bearing',
    rank: 'lost for ever',
    cost: message('the bearing under load cannot be measured without strings.'),
  },
  { thing: 'felts', rank: 'costly', cost: message('thickness, colour and place have to be guessed.') },
  { thing: 'punchings', rank: 'costly', cost: message('where they were and how thick has to be guessed.') },
  {
    thing: 'dampers',
    rank: 'costly',
    cost: message('which damper stood where has to be found out one by one.'),
  },
  { thing: 'bars', rank: 'costly', cost: message('the place of a movable piece has to be guessed.') },
  {
    thing: 'hitch-pins',
    rank: 'convenient',
    cost: message('which pin a wire lay on cannot be seen once it is off.'),
  },
  {
    thing: 'stamps',
    rank: 'convenient',
    cost: message('a size that is stamped there says what the maker meant, and goes with a new bridge cap.'),
  },
];

/** Readings wanted at least once in each section, and what may be said in words instead of them. */
const neededOncePerSection: readonly {
  readonly quantity: ReadingQuantityName;
  readonly orThing?: ObservedThing;
  readonly isNeeded?: (section: Section, notes: readonly AsFoundNote[]) => boolean;
}[] = [
  { quantity: 'pin-diameter' },
  { quantity: 'pin-length' },
  { quantity: 'pin-height' },
  { quantity: 'pin-coils' },
  { quantity: 'front-length' },
  { quantity: 'back-length' },
  { quantity: 'strike-line-spacing', orThing: 'spacing' },
  { quantity: 'bridge-spacing', orThing: 'spacing' },
  {
    quantity: 'pressure-bar-height',
    isNeeded: ({ frontTermination }) => frontTermination === 'pressure bar',
  },
  { quantity: 'loop-to-winding', isNeeded: (_, notes) => notes.some(({ winding }) => winding === 'wound') },
  { quantity: 'winding-length', isNeeded: (_, notes) => notes.some(({ winding }) => winding === 'wound') },
];

/**
 * What the as-found record still lacks before the strings may come off, string by string and thing by thing.
 *
 * A reading closes a gap; so does the answer *none* or *does not apply*. *Unknown* does not: it says that somebody
 * looked in vain, and the gap has to be accepted by name and reason. A thing of a section is answered in words, or by
 * what was measured of it: its soft parts, its plate parts, the wire of every string. The height of a pressure bar is
 * asked for where there is one, where the winding starts and how long it is where strings are wound; pitch and loaded crown
 * once of the whole piano, with the air that they were read in.
 *
 * @param language  of what is missing and of the sentences; the names of gaps are the same in every language
 */
export function stripCheck(job: Job, language: Language = english): StripCheck {
  const { say } = language;
  const found: Gap[] = [];
  if (job.piano === undefined) {
    found.push(
      gap({
        name: 'piano',
        place: {},
        what: say('the piano'),
        rank: 'lost for ever',
        sentence: say('The piano is not described: its compass is needed before anything can be checked.'),
      }),
    );
  }
  if (job.piano !== undefined) found.push(...gapsOfPiano(job, language));
  const record = asFoundRecord(job);
  for (const note of record.notes) found.push(...gapsOfNote(note, language));
  if (job.piano !== undefined && job.sections.length === 0) {
    found.push(
      gap({
        name: 'sections',
        place: {},
        what: say('the sections'),
        rank: 'costly',
        sentence: say(
          'No section is described: where the struts and the breaks are decides how the record is read.',
        ),
      }),
    );
  }
  for (const section of job.sections) found.push(...gapsOfSection(job, section, record.notes, language));
  found.push(
    ...windingGaps(
      job,
      { section: undefined, notes: record.notes.filter((note) => note.section === undefined) },
      language,
    ),
  );

  const acceptedByName = new Map(job.acceptedGaps.map((accepted) => [accepted.gap, accepted]));
  const gaps = found
    .map((one) => {
      const accepted = acceptedByName.get(one.name);
      return accepted === undefined
        ? one
        : {
            ...one,
            accepted: { by: accepted.by, reason: accepted.reason, at: accepted.at, entry: accepted.entry },
          };
    })
    .sort((a, b) => gapRanks.indexOf(a.rank) - gapRanks.indexOf(b.rank));
  const openGaps = gaps.filter((one) => one.accepted === undefined);
  return { gaps, openGaps, isPassed: job.piano !== undefined && openGaps.length === 0 };
}

/** What is read of the piano as a whole, and goes with the pull of the strings. */
function gapsOfPiano(job: Job, { say }: Language): Gap[] {
  const isAnswered = (quantity: ReadingQuantityName): boolean =>
    job.absences.some((one) => one.quantity === quantity && one.answer !== 'unknown');
  const isRead = (quantity: ReadingQuantityName, isMeant: (reading: StandingReading) => boolean): boolean =>
    isAnswered(quantity) ||
    job.readings.some((one) => one.quantity === quantity && one.stage === 'as found' && isMeant(one));
  // The survey may have told of the crown in words.
  const isCrownSeen = job.findings.some(
    ({ thing, answer, copiedFrom }) =>
      thing === 'board-crown' && copiedFrom === undefined && answer.is !== 'could not be seen',
  );
  const gaps: Gap[] = [];
  if (!isRead('pitch-offset', () => true))
    gaps.push(
      gap({
        name: 'pitch-offset/piano',
        place: {},
        what: say(readingQuantities['pitch-offset'].label),
        rank: 'lost for ever',
        sentence: say(
          'At what pitch the piano stood is not recorded: how far the new strings raise it cannot be said later.',
        ),
      }),
    );
  if (!isCrownSeen && !isRead('soundboard-crown', ({ loaded }) => loaded !== false))
    gaps.push(
      gap({
        name: 'soundboard-crown/piano',
        place: {},
        what: say(readingQuantities['soundboard-crown'].label),
        rank: 'lost for ever',
        sentence: say(
          'The crown of the soundboard under load is not recorded: without strings only the unloaded one is left.',
        ),
      }),
    );
  for (const { quantity, sentence } of airNeeded)
    if (!isRead(quantity, () => true))
      gaps.push(
        gap({
          name: `${quantity}/piano`,
          place: {},
          what: say(readingQuantities[quantity].label),
          rank: 'convenient',
          sentence: say(sentence),
        }),
      );
  return gaps;
}

/** The air that pitch, crown and torque were read in. */
const airNeeded: readonly { quantity: ReadingQuantityName; sentence: Message }[] = [
  {
    quantity: 'relative-humidity',
    sentence: message(
      'The relative humidity is not recorded: pitch, crown and torque move with it, and cannot be compared with later ones.',
    ),
  },
  {
    quantity: 'temperature',
    sentence: message(
      'The temperature is not recorded: pitch moves with it, and cannot be compared with a later one.',
    ),
  },
];

function gapsOfNote(note: AsFoundNote, { say }: Language): Gap[] {
  if (note.winding === undefined) {
    return [
      gap({
        name: `stringing/${note.note}`,
        place: { key: note.key },
        what: say('stringing'),
        rank: 'lost for ever',
        sentence: say('How {note} is strung is not described: strings to the note, plain or wound.', {
          note: note.note,
        }),
      }),
    ];
  }
  return note.missing.map((quantity) => {
    const label = say(readingQuantities[quantity].label);
    const cost = say(costOfQuantity[quantity] ?? message('it cannot be had later.'));
    const wasLookedFor = note.absences[quantity] === 'unknown';
    return gap({
      cost,
      ...(wasLookedFor ? { found: say('somebody looked and could not read it') } : {}),
      name: `${quantity}/${note.note}`,
      place: { key: note.key },
      what: label,
      rank: rankOfQuantity[quantity] ?? 'lost for ever',
      sentence: say(
        'The {label} of {note} is not recorded{looked, select, yes { (somebody looked and could not read it)} other {}}: {cost}',
        {
          label,
          note: note.note,
          looked: wasLookedFor ? 'yes' : 'no',
          cost,
        },
      ),
    });
  });
}

function gapsOfSection(
  job: Job,
  described: Section,
  notes: readonly AsFoundNote[],
  language: Language,
): Gap[] {
  const { say } = language;
  const { section } = described;
  const gaps: Gap[] = [];
  const seenOf = (thing: ObservedThing) =>
    job.observations.filter(
      ({ thing: seen, place }) =>
        seen === thing && (place.section === undefined || place.section === section),
    );
  const own = notes.filter((note) => note.section?.section === section);
  for (const { thing, rank, cost } of neededThings) {
    const observations = seenOf(thing);
    if (observations.some(({ answer }) => answer.is !== 'unknown')) continue;
    const measured = measuredAnswer(job, { thing, section, notes: own });
    if (measured.is === 'answered') continue;
    const label = say(observedThings[thing]);
    const hasLooked = observations.length > 0 || measured.is === 'looked in vain';
    const told = { label, section, looked: hasLooked ? 'yes' : 'no', cost: say(cost) };
    const found = [
      ...(measured.is === 'in part'
        ? [say('{left} of {of} strings not noted', { left: measured.left, of: measured.of })]
        : []),
      ...(hasLooked ? [say('somebody looked and could not tell')] : []),
    ].join('; ');
    gaps.push(
      gap({
        name: `${thing}/${section}`,
        place: { section },
        what: label,
        rank,
        cost: told.cost,
        ...(found === '' ? {} : { found }),
        sentence:
          measured.is === 'in part'
            ? say(
                "Of the {label} {left} of {of} strings are not noted in the section '{section}'{looked, select, yes { (somebody looked and could not tell)} other {}}: {cost}",
                { ...told, left: measured.left, of: measured.of },
              )
            : say(
                "Nothing is noted of the {label} in the section '{section}'{looked, select, yes { (somebody looked and could not tell)} other {}}: {cost}",
                told,
              ),
      }),
    );
  }
  gaps.push(...windingGaps(job, { section, notes: own }, language));
  for (const { quantity, orThing, isNeeded } of neededOncePerSection) {
    if (isNeeded?.(described, own) === false) continue;
    if (orThing !== undefined && seenOf(orThing).some(({ answer }) => answer.is !== 'unknown')) continue;
    const isRead =
      own.some((note) => note.figures[quantity] !== undefined) ||
      job.readings.some(
        (one) => one.quantity === quantity && one.stage === 'as found' && one.place.section === section,
      );
    const isAnswered = job.absences.some(
      (absence) =>
        absence.quantity === quantity &&
        absence.answer !== 'unknown' &&
        (absence.place.section === section || own.some((note) => note.key === absence.place.key)),
    );
    if (isRead || isAnswered) continue;
    const label = say(readingQuantities[quantity].label);
    const told = costOfQuantity[quantity];
    const cost = told === undefined ? '' : say(told);
    gaps.push(
      gap({
        ...(cost === '' ? {} : { cost }),
        name: `${quantity}/${section}`,
        place: { section },
        what: label,
        rank: rankOfQuantity[quantity] ?? 'costly',
        sentence: say(
          "No reading of {label} is recorded in the section '{section}' ({note} and up): {cost}",
          {
            label,
            section,
            note: noteName(own[0]?.key ?? 1),
            cost,
          },
        ),
      }),
    );
  }
  return gaps;
}

/** One gap for the wound notes of a section: the maker of the bass strings needs the loop and the twist of each. */
function windingGaps(
  job: Job,
  { section, notes }: { section: string | undefined; notes: readonly AsFoundNote[] },
  { say }: Language,
): Gap[] {
  const missing = notesWithoutWinding(job, notes);
  const [first] = missing;
  if (first === undefined) return [];
  return [
    gap({
      name: `windings/${section ?? 'no section'}`,
      place: section === undefined ? { key: first.key } : { section },
      what: say('loop style and twist'),
      rank: 'costly',
      sentence: say(
        'The loop style and the twist of the winding are not noted of {note}{more, plural, =0 {} other { and # more}} {where}: the maker of the bass strings has to be told, or will guess.',
        {
          note: first.note,
          more: missing.length - 1,
          where:
            section === undefined
              ? say('in the part of the compass that is in no section')
              : say("in the section '{section}'", { section }),
        },
      ),
    }),
  ];
}

const gap = (one: Gap): Gap => one;
