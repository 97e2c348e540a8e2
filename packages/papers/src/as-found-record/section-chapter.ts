import { noteName } from '@becket/core';
import {
  type AsFoundNote,
  type FactOf,
  isAsFoundFact,
  type Job,
  observedThings,
  type ReadingQuantityName,
  readingQuantities,
  type Section,
} from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { counted } from '../every-paper/running-lines.ts';
import { type LengthUnit, lengthInWords } from '../figures/lengths.ts';
import type { Block, Cell, Table } from '../page-tree.ts';
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
): Block[] {
  const { section: name, firstKey, lastKey, bridge, frontTermination } = section;
  const strings = notes.reduce((sum, note) => sum + (note.strings ?? 0), 0);
  const undescribed = notes.filter((note) => note.strings === undefined).length;
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: `Section: ${name}` },
    {
      is: 'facts',
      rows: [
        {
          name: 'Notes',
          value: `${noteName(firstKey)} to ${noteName(lastKey)} (keys ${firstKey} to ${lastKey})`,
        },
        {
          name: 'Strings',
          value:
            undescribed === 0
              ? String(strings)
              : `${strings} described; ${counted(undescribed, 'note', 'notes')} not described`,
        },
        { name: 'Bridge', value: bridge },
        { name: 'Front termination', value: frontTermination },
      ],
    },
    ...noteTables(`section ${name}`, notes, unit),
    ...seenInSection(job, notes, (place) => isInSection(place, section), unit, name),
    ...furtherReadings(
      `section ${name}`,
      notes,
      job.readings.filter((reading) => isInSection(reading.place, section)),
      unit,
    ),
  ];
}

/** Notes that no section holds, and what was seen on the piano as a whole. */
export function wholePianoChapter(job: Job, notes: readonly AsFoundNote[], unit: LengthUnit): Block[] {
  const isElsewhere = (place: Place) => !job.sections.some((section) => isInSection(place, section));
  const blocks = [
    ...noteTables('no section', notes, unit),
    ...seenInSection(job, notes, isElsewhere, unit),
    ...furtherReadings(
      'no section',
      notes,
      job.readings.filter((reading) => isElsewhere(reading.place)),
      unit,
    ),
  ];
  return blocks.length === 0 ? [] : [{ is: 'heading', level: 2, text: 'The piano as a whole' }, ...blocks];
}

export interface Place {
  readonly key?: number | undefined;
  readonly string?: number | undefined;
  readonly section?: string | undefined;
}

export function isInSection(
  { key, section: named }: Place,
  { section, firstKey, lastKey }: Section,
): boolean {
  if (named !== undefined) return named === section;
  return key !== undefined && firstKey <= key && key <= lastKey;
}

function noteTables(section: string, notes: readonly AsFoundNote[], unit: LengthUnit): Block[] {
  const plain = notes.filter((note) => note.winding === 'plain');
  const wound = notes.filter((note) => note.winding === 'wound');
  const undescribed = notes.filter((note) => note.winding === undefined);
  const contradictions = notes.flatMap(({ note, contradiction }) =>
    contradiction === undefined ? [] : [`${note}: ${contradiction}. Measure this note again.`],
  );
  return [
    ...(wound.length > 0
      ? [woundNotesTable(section, wound, unit), ...woundEvidenceTables(section, wound, unit)]
      : []),
    ...(plain.length > 0 ? [plainNotesTable(section, plain, unit)] : []),
    ...(undescribed.length > 0 ? [undescribedNotesTable(section, undescribed)] : []),
    ...(contradictions.length > 0
      ? [
          {
            is: 'box',
            tone: 'note',
            title: 'Figures that contradict each other',
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
  section?: string,
): Block[] {
  const inNamed = (named: string) => isHere({ section: named });
  const rows: { thing: string; where: string; found: Cell }[] = [
    ...job.observations
      .filter(({ place }) => isHere(place))
      .map(({ thing, place, answer }) => ({
        thing: observedThings[thing],
        where: placeInWords(place, section),
        found: answer.is === 'known' ? answer.text : absentCell(answer.is, answer.reason),
      })),
    ...job.absences
      .filter(({ quantity, place }) => isHere(place) && !isInNoteTable(notes, quantity, place))
      .map(({ quantity, place, answer, reason }) => ({
        thing: readingQuantities[quantity].label,
        where: placeInWords(place, section),
        found: absentCell(answer, reason),
      })),
    ...job.softParts
      .filter((part) => inNamed(part.section))
      .map(({ part, answer }) => ({
        thing: part,
        where: 'whole section',
        found: softPartCell(answer, unit),
      })),
    ...job.plateParts
      .filter((part) => inNamed(part.section))
      .map((part) => ({ thing: part.part, where: 'whole section', found: platePartText(part, unit) })),
    ...job.sizeStamps
      .filter(({ key }) => isHere({ key }))
      .map(({ key, on, text, lattice, says }) => ({
        thing: 'size stamp',
        where: `${noteName(key)}, ${on}`,
        found: `“${text}” ${says}${lattice === 'unknown' ? ' (numbering unknown)' : ` (${lattice} numbering)`}`,
      })),
    ...job.windings
      .filter(({ key }) => isHere({ key }))
      .map(({ key, string, loopStyle, twist }) => ({
        thing: 'winding',
        where: placeInWords({ key, string }),
        found: `loop style: ${loopStyle}; winding runs: ${twist} (seen from the loop)`,
      })),
    ...job.samples
      .filter(({ place }) => isHere(place))
      .map(({ what, place, label }) => ({
        thing: 'sample kept',
        where: placeInWords(place, section),
        found: `${what}, in the bag labelled “${label}”`,
      })),
    ...job.photos
      .filter((photo) => isHere(photo.place) && isAsFoundFact(photo))
      .map(({ shows, place, digest }) => ({
        thing: 'photo',
        where: placeInWords(place, section),
        found: `${shows ?? 'nothing said of what it shows'} (digest ${digest.slice(0, 12)})`,
      })),
  ];
  const blocks: Block[] = [];
  if (rows.length > 0) {
    blocks.push({
      is: 'table',
      title: 'What was seen',
      columns: [
        { heading: 'thing', align: 'left', share: 110 },
        { heading: 'where', align: 'left', share: 100 },
        { heading: 'as found', align: 'left', share: 290 },
      ],
      rows: rows.map(({ thing, where, found }) => ({ cells: [thing, where, found] })),
    });
  }
  const wires = job.wirePaths.filter(({ strings }) => strings.some(({ key }) => isHere({ key })));
  if (wires.length > 0) blocks.push(wirePathTable(wires));
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
function wirePathTable(wires: readonly FactOf<'wire-path'>[]): Table {
  return {
    is: 'table',
    title: 'Wires',
    columns: [
      { heading: 'strings (note, string counted from the bass side)', align: 'left', share: 170 },
      { heading: 'joined', align: 'left', share: 70 },
      { heading: 'hitch pin', align: 'left', share: 70 },
      { heading: 'remark', align: 'left', share: 190 },
    ],
    rows: wires.map(({ strings, joined, hitchPin, otherHitchPin, note }) => ({
      cells: [
        strings.map(({ key, string }) => `${noteName(key)} ${string}`).join(' and '),
        joined === 'unknown' ? { absent: 'unknown' } : joined,
        [hitchPin, otherHitchPin].filter((pin) => pin !== undefined).join(' and '),
        note ?? '',
      ],
    })),
  };
}

function softPartCell(answer: FactOf<'soft-part'>['answer'], unit: LengthUnit): Cell {
  if (answer.is !== 'known') return absentCell(answer.is, answer.reason);
  const { thickness_m, length_m, width_m, colour, where } = answer;
  const parts = [
    colour,
    thickness_m === undefined ? undefined : `thickness ${lengthInWords(thickness_m, 'length', unit)}`,
    width_m === undefined ? undefined : `width ${lengthInWords(width_m, 'length', unit)}`,
    length_m === undefined ? undefined : `length ${lengthInWords(length_m, 'length', unit)}`,
    where,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? 'present, nothing more said' : parts.join('; ');
}

function platePartText({ isMovable, distances, note }: FactOf<'plate-part'>, unit: LengthUnit): string {
  const from = distances.map(
    ({ from: point, distance_m }) => `${lengthInWords(distance_m, 'length', unit)} from ${point}`,
  );
  return [isMovable ? 'movable' : 'fixed', ...from, ...(note === undefined ? [] : [note])].join('; ');
}

const absentCell = (answer: string, reason: string | undefined): Cell => ({
  absent: reason === undefined ? answer : `${answer}: ${reason}`,
});
