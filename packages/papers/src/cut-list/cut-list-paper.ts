import type { Language } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { counted, runningLines } from '../every-paper/running-lines.ts';
import { type LengthUnit, lengthText, otherUnit } from '../figures/lengths.ts';
import type { Block, PageTree, Table, TableRow } from '../page-tree.ts';
import type { StringingFigures, StringingWire } from '../stringing-sheets/stringing-figures.ts';
import { stringWords, wireWords } from '../stringing-sheets/wire-words.ts';
import { wiresForMachines } from '../stringing-sheets/wires-for-machines.ts';

/** Loop plan and cut list: which strings share a wire, and each wire with the parts of its length, size by size. */
export function cutListPaper(job: Job, options: PaperOptions, figures: StringingFigures): PageTree {
  const { firstUnit: unit, language } = options;
  const { wires } = figures;
  const looped = wires.filter(({ joined }) => joined === 'looped').length;
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'Loop plan and cut list' },
    {
      is: 'paragraph',
      tone: 'lead',
      text: `${counted(wires.length, 'wire', 'wires')}: ${looped} looped round a hitch pin for two strings each, ${wires.length - looped} tied.`,
    },
    {
      is: 'facts',
      rows: [
        { name: 'Job', value: job.title },
        { name: 'Scale', value: figures.scale },
        { name: 'Added to each wire', value: figures.allowances },
      ],
    },
    ...(figures.uncounted.length === 0
      ? []
      : ([
          {
            is: 'box',
            tone: 'note',
            title: 'No wire can be cut for',
            texts: figures.uncounted.map((one) => `${stringWords(one)}: ${one.needs}.`),
          },
        ] as const)),
    sizesTable(wires, unit, language),
    { is: 'page break' },
    { is: 'heading', level: 2, text: 'Each wire' },
    wiresTable(wires, unit, language),
  ];
  return {
    paper: 'loop plan and cut list',
    title: 'Loop plan and cut list',
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(job, figures.allowances, options),
    blocks,
    machineTable: wiresForMachines(wires),
  };
}

function sizesTable(wires: readonly StringingWire[], unit: LengthUnit, language: Language): Table {
  const sizes = [...new Set(wires.map(({ diameter }) => diameter))].sort((a, b) => b - a);
  let total = 0;
  const rows: TableRow[] = sizes.map((diameter) => {
    const own = wires.filter((wire) => wire.diameter === diameter);
    const length = own.reduce((sum, { cut }) => sum + cut.total, 0);
    total += length;
    return {
      cells: [
        wireWords(own[0]!, unit, language),
        String(own.filter(({ joined }) => joined === 'looped').length),
        String(own.filter(({ joined }) => joined === 'tied').length),
        length.toFixed(2),
        (length / 0.3048).toFixed(1),
      ],
    };
  });
  return {
    is: 'table',
    title: 'Wire by size, without spares',
    columns: [
      { heading: 'size', align: 'left', share: 90 },
      { heading: 'looped', align: 'right', share: 24 },
      { heading: 'tied', align: 'right', share: 24 },
      { group: 'length', heading: 'm', align: 'right', share: 30 },
      { group: 'length', heading: 'ft', align: 'right', share: 30, tone: 'quiet' },
    ],
    rows: [
      ...rows,
      {
        tone: 'sum',
        cells: [
          'all sizes',
          String(wires.filter(({ joined }) => joined === 'looped').length),
          String(wires.filter(({ joined }) => joined === 'tied').length),
          total.toFixed(2),
          (total / 0.3048).toFixed(1),
        ],
      },
    ],
  };
}

const partNames = ['front', 'speaking', 'back', 'coils', 'beckets', 'hitch', 'tie', 'waste'] as const;

function wiresTable(wires: readonly StringingWire[], unit: LengthUnit, language: Language): Table {
  const rows: TableRow[] = [];
  let section: string | undefined;
  let isFirst = true;
  for (const [index, wire] of wires.entries()) {
    const own = wire.strings[0]!.section;
    if (isFirst || own !== section)
      rows.push({ band: own === undefined ? 'In no section' : `Section ${own}` });
    section = own;
    isFirst = false;
    rows.push({
      cells: [
        String(index + 1),
        wire.strings.map(stringWords).join(' – '),
        wire.joined,
        lengthText(wire.diameter, unit, 'diameter', language),
        ...partNames.map((part) =>
          wire.cut.parts[part] === 0
            ? { absent: 'none' }
            : lengthText(wire.cut.parts[part], unit, 'length', language),
        ),
        lengthText(wire.cut.total, unit, 'length', language),
        lengthText(wire.cut.total, otherUnit(unit), 'length', language),
        wire.remarks.join('; '),
      ],
    });
  }
  return {
    is: 'table',
    columns: [
      { heading: 'wire', align: 'right', share: 18, tone: 'quiet' },
      { heading: 'strings', align: 'left', share: 62 },
      { heading: 'made as', align: 'left', share: 30 },
      { heading: `diameter, ${unit}`, align: 'right', share: 34 },
      ...partNames.map((part) => ({
        group: `parts, ${unit}`,
        heading: part,
        align: 'right' as const,
        share: 32,
        tone: 'quiet' as const,
      })),
      { group: 'cut', heading: unit, align: 'right', share: 36, page: 'core/rescale/loop-plan' },
      { group: 'cut', heading: otherUnit(unit), align: 'right', share: 30, tone: 'quiet' },
      { heading: 'taken, not read', align: 'left', share: 70, tone: 'quiet' },
    ],
    rows,
    remarks: ['A length without a remark was read at its own note. “none”: the wire has no such part.'],
  };
}
