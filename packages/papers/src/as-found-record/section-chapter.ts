import { isInKeyRange, type Language, type LengthUnit, message, noteName } from '@becket/core';
import {
  type Absence,
  type AsFoundNote,
  answersThatStand,
  type FactOf,
  isAsFoundFact,
  type Job,
  observedThings,
  type ReadingQuantityName,
  readingQuantities,
  type Section,
} from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { shortDigest } from '../every-paper/running-lines.ts';
import { lengthInWords } from '../figures/lengths.ts';
import type { Block, Cell, Table } from '../page-tree.ts';
import { joinedWords } from '../stringing-sheets/wire-words.ts';
import { furtherReadings } from './further-readings.ts';
import {
  plainNotesTable,
  quantitiesShown,
  undescribedNotesTable,
  woundEvidenceTables,
  woundNotesTable,
} from './note-tables.ts';

/** One section: what it is, what was seen in it, and every note of it. */
export function sectionChapter(
  job: Job,
  section: Section,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say } = language;
  const where = say('section {section}', { section: section.section });
  const { section: name, firstKey, lastKey, bridge, frontTermination } = section;
  const strings = notes.reduce((sum, note) => sum + (note.strings ?? 0), 0);
  const undescribed = notes.filter((note) => note.strings === undefined).length;
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('Section: {name}', { name }) },
    {
      is: 'facts',
      rows: [
        {
          name: say('Notes'),
          value: say('{first} to {last} (keys {firstKey} to {lastKey})', {
            first: noteName(firstKey),
            last: noteName(lastKey),
            firstKey: String(firstKey),
            lastKey: String(lastKey),
          }),
        },
        {
          name: say('Strings'),
          value:
            undescribed === 0
              ? String(strings)
              : say('{strings} described; {count, plural, one {# note} other {# notes}} not described', {
                  strings: String(strings),
                  count: undescribed,
                }),
        },
        { name: say('Bridge'), value: bridge },
        { name: say('Front termination'), value: say(frontTermination) },
      ],
    },
    ...noteTables(where, notes, unit, language),
    ...seenInSection(job, notes, (place) => isInSection(place, section), unit, language, name),
    ...furtherReadings(
      where,
      notes,
      job.readings.filter((reading) => isInSection(reading.place, section)),
      unit,
      language,
    ),
  ];
}

/** Notes that no section holds, and what was seen on the piano as a whole. */
export function wholePianoChapter(
  job: Job,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say } = language;
  const isElsewhere = (place: Place) => !job.sections.some((section) => isInSection(place, section));
  const blocks = [
    ...noteTables(say('no section'), notes, unit, language),
    ...seenInSection(job, notes, isElsewhere, unit, language),
    ...furtherReadings(
      say('no section'),
      notes,
      job.readings.filter((reading) => isElsewhere(reading.place)),
      unit,
      language,
    ),
  ];
  return blocks.length === 0
    ? []
    : [{ is: 'heading', level: 2, text: say('The piano as a whole') }, ...blocks];
}

export interface Place {
  readonly key?: number | undefined;
  readonly string?: number | undefined;
  readonly section?: string | undefined;
}

export function isInSection({ key, section: named }: Place, section: Section): boolean {
  if (named !== undefined) return named === section.section;
  return key !== undefined && isInKeyRange(key, section);
}

function noteTables(
  section: string,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say } = language;
  const plain = notes.filter((note) => note.winding === 'plain');
  const wound = notes.filter((note) => note.winding === 'wound');
  const undescribed = notes.filter((note) => note.winding === undefined);
  const contradictions = notes.flatMap(({ note, contradiction }) =>
    contradiction === undefined
      ? []
      : [
          say('{note}: {contradiction}. Measure this note again.', {
            note,
            contradiction: say(contradiction),
          }),
        ],
  );
  return [
    ...(wound.length > 0
      ? [
          woundNotesTable(section, wound, unit, language),
          ...woundEvidenceTables(section, wound, unit, language),
        ]
      : []),
    ...(plain.length > 0 ? [plainNotesTable(section, plain, unit, language)] : []),
    ...(undescribed.length > 0 ? [undescribedNotesTable(section, undescribed, language)] : []),
    ...(contradictions.length > 0
      ? [
          {
            is: 'box',
            tone: 'note',
            title: say('Figures that contradict each other'),
            texts: contradictions,
          } as const,
        ]
      : []),
  ];
}

/** Things looked at, in words: observations, soft parts, plate parts, stamps, loops, samples and photos. */
function seenInSection(
  job: Job,
  notes: readonly AsFoundNote[],
  isHere: (place: Place) => boolean,
  unit: LengthUnit,
  language: Language,
  section?: string,
): Block[] {
  const { say } = language;
  const inNamed = (named: string) => isHere({ section: named });
  const rows: { thing: string; where: string; found: Cell }[] = [
    ...job.observations
      .filter(({ place }) => isHere(place))
      .map(({ thing, place, answer }) => ({
        thing: say(observedThings[thing]),
        where: placeInWords(place, language, section),
        found: answer.is === 'known' ? answer.text : absentCell(answer.is, answer.reason, language),
      })),
    ...answersThatStand(job)
      .filter(({ quantity, place }) => isHere(place) && !isInNoteTable(notes, quantity, place))
      .map(({ quantity, place, answer, reason }) => ({
        thing: say(readingQuantities[quantity].label),
        where: placeInWords(place, language, section),
        found: absentCell(answer, reason, language),
      })),
    ...job.softParts
      .filter((part) => inNamed(part.section))
      .map(({ part, answer }) => ({
        thing: say(part),
        where: say('whole section'),
        found: softPartCell(answer, unit, language),
      })),
    ...job.plateParts
      .filter((part) => inNamed(part.section))
      .map((part) => ({
        thing: part.part,
        where: say('whole section'),
        found: platePartText(part, unit, language),
      })),
    ...job.sizeStamps
      .filter(({ key }) => isHere({ key }))
      .map(({ key, on, text, lattice, says }) => ({
        thing: say('size stamp'),
        where: `${noteName(key)}, ${say(stampPlaces[on])}`,
        found: say(stampWords[says][lattice], { text }),
      })),
    ...job.windings
      .filter(({ key }) => isHere({ key }))
      .map(({ key, string, loopStyle, twist }) => ({
        thing: say('[thing seen] winding'),
        where: placeInWords({ key, string }, language),
        found: say('loop style: {style}; winding runs: {direction} (seen from the loop)', {
          style: say(loopStyle),
          direction: say(twist),
        }),
      })),
    ...job.samples
      .filter(({ place }) => isHere(place))
      .map(({ what, place, label }) => ({
        thing: say('sample kept'),
        where: placeInWords(place, language, section),
        found: say('{what}, in the bag labelled “{label}”', { what, label }),
      })),
    ...job.photos
      .filter((photo) => isHere(photo.place) && isAsFoundFact(photo))
      .map(({ shows, place, digest }) => ({
        thing: say('photo'),
        where: placeInWords(place, language, section),
        found: say('{what} (digest {digest})', {
          what: shows ?? say('nothing said of what it shows'),
          digest: shortDigest(digest),
        }),
      })),
  ];
  const blocks: Block[] = [];
  if (rows.length > 0) {
    blocks.push({
      is: 'table',
      title: say('What was seen'),
      columns: [
        { heading: say('[something seen] thing'), align: 'left', share: 110 },
        { heading: say('where'), align: 'left', share: 100 },
        { heading: say('as found'), align: 'left', share: 290 },
      ],
      rows: rows.map(({ thing, where, found }) => ({ cells: [thing, where, found] })),
    });
  }
  const wires = job.wirePaths.filter(({ strings }) => strings.some(({ key }) => isHere({ key })));
  if (wires.length > 0) blocks.push(wirePathTable(wires, language));
  return blocks;
}

/** True when the answer stands in a table of notes already. */
function isInNoteTable(
  notes: readonly AsFoundNote[],
  quantity: ReadingQuantityName,
  { key, string }: Place,
): boolean {
  // What is said of one string alone has no cell of its own there.
  if (string !== undefined) return false;
  const note = notes.find((one) => one.key === key);
  return note !== undefined && quantitiesShown(note).includes(quantity);
}

/** Which strings shared a wire, and on which hitch pin it turned. */
function wirePathTable(wires: readonly FactOf<'wire-path'>[], { say, list }: Language): Table {
  return {
    is: 'table',
    title: say('Wires'),
    columns: [
      { heading: say('strings (note, string counted from the bass side)'), align: 'left', share: 170 },
      { heading: say('[of a wire] joined'), align: 'left', share: 70 },
      { heading: say('hitch pin'), align: 'left', share: 70 },
      { heading: say('remark'), align: 'left', share: 190 },
    ],
    rows: wires.map(({ strings, joined, hitchPin, otherHitchPin, note }) => ({
      cells: [
        list(strings.map(({ key, string }) => `${noteName(key)} ${string}`)),
        joined === 'unknown' ? { absent: say('unknown') } : say(joinedWords[joined]),
        list([hitchPin, otherHitchPin].filter((pin) => pin !== undefined)),
        note ?? '',
      ],
    })),
  };
}

function softPartCell(answer: FactOf<'soft-part'>['answer'], unit: LengthUnit, language: Language): Cell {
  if (answer.is !== 'known') return absentCell(answer.is, answer.reason, language);
  const { say } = language;
  const { thickness_m, length_m, width_m, colour, where } = answer;
  const parts = [
    colour,
    thickness_m === undefined
      ? undefined
      : say('thickness {length}', { length: lengthInWords(thickness_m, 'thin', unit, language) }),
    width_m === undefined
      ? undefined
      : say('width {length}', { length: lengthInWords(width_m, 'length', unit, language) }),
    length_m === undefined
      ? undefined
      : say('length {length}', { length: lengthInWords(length_m, 'length', unit, language) }),
    where,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? say('present, nothing more said') : parts.join('; ');
}

function platePartText(
  { isMovable, distances, note }: FactOf<'plate-part'>,
  unit: LengthUnit,
  language: Language,
): string {
  const { say } = language;
  const from = distances.map(({ from: point, distance_m }) =>
    say('{length} from {point}', { length: lengthInWords(distance_m, 'length', unit, language), point }),
  );
  return [
    isMovable ? say('[plate part] movable') : say('[plate part] fixed'),
    ...from,
    ...(note === undefined ? [] : [note]),
  ].join('; ');
}

const absentCell = (answer: Absence, reason: string | undefined, { say }: Language): Cell => ({
  absent: reason === undefined ? say(answer) : `${say(answer)}: ${reason}`,
});

const stampPlaces = {
  bridge: message('[place of a stamp] bridge'),
  plate: message('[place of a stamp] plate'),
  elsewhere: message('[place of a stamp] elsewhere'),
} as const;

const stampWords = {
  'starts here': {
    US: message('“{text}” starts here (US numbering)'),
    metric: message('“{text}” starts here (metric numbering)'),
    unknown: message('“{text}” starts here (numbering unknown)'),
  },
  'ends here': {
    US: message('“{text}” ends here (US numbering)'),
    metric: message('“{text}” ends here (metric numbering)'),
    unknown: message('“{text}” ends here (numbering unknown)'),
  },
} as const;
