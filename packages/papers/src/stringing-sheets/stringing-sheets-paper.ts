import { type Language, type LengthUnit, otherUnit, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import { lengthText } from '../figures/lengths.ts';
import type { Block, PageTree, TableRow } from '../page-tree.ts';
import type { StringingFigures, StringingWire } from './stringing-figures.ts';
import { joinedInColumn, stringWords, wireWords } from './wire-words.ts';
import { wiresForMachines } from './wires-for-machines.ts';

/**
 * Stringing sheets: one for each section, in large type, in the order in which the strings go on. Made to lie on the plate
 * and to be read at arm's length, and to survive a photocopier: black on white, a box to tick for each wire.
 */
export function stringingSheetsPaper(job: Job, options: PaperOptions, figures: StringingFigures): PageTree {
  const { firstUnit: unit, language } = options;
  const { say } = language;
  const sections = [...new Set([...figures.wires, ...figures.wound].map(sectionOf))];
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Stringing sheets') },
    { is: 'paragraph', tone: 'lead', text: `${sayKnown(job.title, language)}: ${figures.scale}.` },
    {
      is: 'box',
      tone: 'caution',
      title: say('Before a wire goes on'),
      texts: [
        say(
          'Wear eye protection and gloves when wire is cut, coiled and pulled; keep the face out of the line of a string under tension.',
        ),
        say(
          'Bring tension up evenly: some of every section in each round, never one section to pitch alone.',
        ),
        say(
          'Compare the size on the coil, by micrometer, with the size on the sheet before the first cut of each size.',
        ),
      ],
    },
    ...whatIsMissing(figures, language),
  ];
  for (const section of sections) {
    blocks.push({ is: 'page break' }, { is: 'heading', level: 2, text: sectionName(section, language) });
    const wires = figures.wires.filter((wire) => sectionOf(wire) === section);
    if (wires.length > 0) blocks.push(sheetOf(wires, unit, language));
    const wound = figures.wound.filter((string) => sectionOf(string) === section);
    if (wound.length > 0)
      blocks.push(
        { is: 'heading', level: 3, text: say('Wound strings, from the set as received') },
        { is: 'list', marks: 'boxes', items: woundItems(wound, language) },
      );
  }
  return {
    paper: 'stringing sheets',
    title: say('Stringing sheets'),
    language: language.locale,
    orientation: 'portrait',
    textSize: 'large',
    running: runningLines(job, figures.allowances, options),
    blocks,
    machineTable: wiresForMachines(figures.wires),
  };
}

const sectionOf = (part: StringingWire | StringingFigures['wound'][number]): string | undefined =>
  'strings' in part ? part.strings[0]!.section : part.section;
const sectionName = (section: string | undefined, { say }: Language): string =>
  section === undefined ? say('In no section') : say('Section {section}', { section });

/** One row a wire, under a band for each run of one size; the size stands in every row too, since a run may go on overleaf. */
function sheetOf(wires: readonly StringingWire[], unit: LengthUnit, language: Language): Block {
  const rows: TableRow[] = [];
  const { say } = language;
  let before: number | undefined;
  for (const wire of wires) {
    if (wire.diameter !== before) rows.push({ band: wireWords(wire, unit, language) });
    before = wire.diameter;
    rows.push({
      cells: [
        '☐',
        wire.strings.map(stringWords).join('  –  '),
        say(joinedInColumn[wire.joined]),
        lengthText(wire.diameter, unit, 'diameter', language),
        lengthText(wire.cut.total, unit, 'length', language),
        lengthText(wire.cut.total, otherUnit(unit), 'length', language),
      ],
    });
  }
  return {
    is: 'table',
    columns: [
      { heading: say('[string is on the piano] on'), align: 'centre', share: 12 },
      { heading: say('strings, bass side first'), align: 'left', share: 54 },
      { heading: say('wire'), align: 'left', share: 26 },
      { group: say('[of wire] size'), heading: unit, align: 'right', share: 24 },
      {
        group: say('[length of a wire] cut'),
        heading: unit,
        align: 'right',
        share: 26,
        page: 'core/rescale/loop-plan',
      },
      {
        group: say('[length of a wire] cut'),
        heading: otherUnit(unit),
        align: 'right',
        share: 26,
        tone: 'quiet',
      },
    ],
    rows,
  };
}

/** One item a note, so that a page holds a section. */
function woundItems(wound: StringingFigures['wound'], { say }: Language): string[] {
  const notes = new Map<string, number>();
  for (const { note } of wound) notes.set(note, (notes.get(note) ?? 0) + 1);
  return [...notes].map(([note, strings]) =>
    say('{note}: {count, plural, one {# string} other {# strings}}', { note, count: strings }),
  );
}

function whatIsMissing({ uncounted, undescribed }: StringingFigures, { say }: Language): Block[] {
  const texts = [
    ...uncounted.map((one) => `${stringWords(one)}: ${one.needs}.`),
    ...(undescribed.length === 0
      ? []
      : [
          say('Nobody has described the stringing of {notes}: these are on no sheet.', {
            notes: undescribed.join(', '),
          }),
        ]),
  ];
  return texts.length === 0 ? [] : [{ is: 'box', tone: 'note', title: say('Not on these sheets'), texts }];
}
