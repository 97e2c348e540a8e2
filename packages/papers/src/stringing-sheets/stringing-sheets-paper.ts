import type { Language } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { counted, runningLines } from '../every-paper/running-lines.ts';
import { type LengthUnit, lengthText, otherUnit } from '../figures/lengths.ts';
import type { Block, PageTree, TableRow } from '../page-tree.ts';
import type { StringingFigures, StringingWire } from './stringing-figures.ts';
import { stringWords, wireWords } from './wire-words.ts';
import { wiresForMachines } from './wires-for-machines.ts';

/**
 * Stringing sheets: one for each section, in large type, in the order in which the strings go on. Made to lie on the plate
 * and to be read at arm's length, and to survive a photocopier: black on white, a box to tick for each wire.
 */
export function stringingSheetsPaper(job: Job, options: PaperOptions, figures: StringingFigures): PageTree {
  const { firstUnit: unit, language } = options;
  const sections = [...new Set([...figures.wires, ...figures.wound].map(sectionOf))];
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'Stringing sheets' },
    { is: 'paragraph', tone: 'lead', text: `${job.title}: ${figures.scale}.` },
    {
      is: 'box',
      tone: 'caution',
      title: 'Before a wire goes on',
      texts: [
        'Wear eye protection and gloves when wire is cut, coiled and pulled; keep the face out of the line of a string under tension.',
        'Bring tension up evenly: some of every section in each round, never one section to pitch alone.',
        'Compare the size on the coil, by micrometer, with the size on the sheet before the first cut of each size.',
      ],
    },
    ...whatIsMissing(figures),
  ];
  for (const section of sections) {
    blocks.push({ is: 'page break' }, { is: 'heading', level: 2, text: sectionName(section) });
    const wires = figures.wires.filter((wire) => sectionOf(wire) === section);
    if (wires.length > 0) blocks.push(sheetOf(wires, unit, language));
    const wound = figures.wound.filter((string) => sectionOf(string) === section);
    if (wound.length > 0)
      blocks.push(
        { is: 'heading', level: 3, text: 'Wound strings, from the set as received' },
        { is: 'list', marks: 'boxes', items: woundItems(wound) },
      );
  }
  return {
    paper: 'stringing sheets',
    title: 'Stringing sheets',
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
const sectionName = (section: string | undefined): string =>
  section === undefined ? 'In no section' : `Section ${section}`;

/** One row a wire, under a band for each run of one size. */
function sheetOf(wires: readonly StringingWire[], unit: LengthUnit, language: Language): Block {
  const rows: TableRow[] = [];
  let before: number | undefined;
  for (const wire of wires) {
    if (wire.diameter !== before) rows.push({ band: `${wireWords(wire, unit, language)}` });
    before = wire.diameter;
    rows.push({
      cells: [
        '☐',
        wire.strings.map(stringWords).join('  –  '),
        wire.joined,
        lengthText(wire.cut.total, unit, 'length', language),
        lengthText(wire.cut.total, otherUnit(unit), 'length', language),
      ],
    });
  }
  return {
    is: 'table',
    columns: [
      { heading: 'on', align: 'centre', share: 12 },
      { heading: 'strings, bass side first', align: 'left', share: 60 },
      { heading: 'wire', align: 'left', share: 26 },
      { group: 'cut', heading: unit, align: 'right', share: 30, page: 'core/rescale/loop-plan' },
      { group: 'cut', heading: otherUnit(unit), align: 'right', share: 26, tone: 'quiet' },
    ],
    rows,
  };
}

/** One item a note, so that a page holds a section. */
function woundItems(wound: StringingFigures['wound']): string[] {
  const notes = new Map<string, number>();
  for (const { note } of wound) notes.set(note, (notes.get(note) ?? 0) + 1);
  return [...notes].map(([note, strings]) => `${note}: ${counted(strings, 'string', 'strings')}`);
}

function whatIsMissing({ uncounted, undescribed }: StringingFigures): Block[] {
  const texts = [
    ...uncounted.map((one) => `${stringWords(one)}: ${one.needs}.`),
    ...(undescribed.length === 0
      ? []
      : [`Nobody has described the stringing of ${undescribed.join(', ')}: these are on no sheet.`]),
  ];
  return texts.length === 0 ? [] : [{ is: 'box', tone: 'note', title: 'Not on these sheets', texts }];
}
