import { type Language, type LengthUnit, message, otherUnit, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import { lengthText } from '../figures/lengths.ts';
import type { Block, PageTree, Table, TableRow } from '../page-tree.ts';
import type { StringingFigures, StringingWire } from '../stringing-sheets/stringing-figures.ts';
import { joinedInColumn, stringWords, wireWords } from '../stringing-sheets/wire-words.ts';
import { wiresForMachines } from '../stringing-sheets/wires-for-machines.ts';

/** Loop plan and cut list: which strings share a wire, and each wire with the parts of its length, size by size. */
export function cutListPaper(job: Job, options: PaperOptions, figures: StringingFigures): PageTree {
  const { firstUnit: unit, language } = options;
  const { say, plain } = language;
  const { wires } = figures;
  const looped = wires.filter(({ joined }) => joined === 'looped').length;
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Loop plan and cut list') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        '{count, plural, one {# wire} other {# wires}}: {looped} looped round a hitch pin for two strings each, {tied} tied.',
        { count: wires.length, looped: plain(looped), tied: plain(wires.length - looped) },
      ),
    },
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: sayKnown(job.title, language) },
        { name: say('Scale'), value: figures.scale },
        { name: say('Added to each wire'), value: figures.allowances },
      ],
    },
    ...(figures.uncounted.length === 0
      ? []
      : ([
          {
            is: 'box',
            tone: 'note',
            title: say('No wire can be cut for'),
            texts: figures.uncounted.map((one) => `${stringWords(one)}: ${one.needs}.`),
          },
        ] as const)),
    sizesTable(wires, unit, language),
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('Each wire') },
    wiresTable(wires, unit, language),
  ];
  return {
    paper: 'loop plan and cut list',
    title: say('Loop plan and cut list'),
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(job, figures.allowances, options),
    blocks,
    machineTable: wiresForMachines(wires),
  };
}

function sizesTable(wires: readonly StringingWire[], unit: LengthUnit, language: Language): Table {
  const { say, fixed } = language;
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
        fixed(length, 2),
        fixed(length / 0.3048, 1),
      ],
    };
  });
  return {
    is: 'table',
    title: say('Wire by size, without spares'),
    columns: [
      { heading: say('[of wire] size'), align: 'left', share: 90 },
      { heading: say('[of a wire] looped'), align: 'right', share: 24 },
      { heading: say('[of a wire] tied'), align: 'right', share: 24 },
      { group: say('length'), heading: 'm', align: 'right', share: 30 },
      { group: say('length'), heading: 'ft', align: 'right', share: 30, tone: 'quiet' },
    ],
    rows: [
      ...rows,
      {
        tone: 'sum',
        cells: [
          say('[of wire] all sizes'),
          String(wires.filter(({ joined }) => joined === 'looped').length),
          String(wires.filter(({ joined }) => joined === 'tied').length),
          fixed(total, 2),
          fixed(total / 0.3048, 1),
        ],
      },
    ],
  };
}

const parts = [
  ['front', message('[part of a wire] front')],
  ['speaking', message('[part of a wire] speaking')],
  ['back', message('[part of a wire] back')],
  ['coils', message('[part of a wire] coils')],
  ['beckets', message('[part of a wire] beckets')],
  ['hitch', message('[part of a wire] hitch')],
  ['tie', message('[part of a wire] tie')],
  ['waste', message('[part of a wire] waste')],
] as const;

function wiresTable(wires: readonly StringingWire[], unit: LengthUnit, language: Language): Table {
  const rows: TableRow[] = [];
  const { say } = language;
  let section: string | undefined;
  let isFirst = true;
  for (const [index, wire] of wires.entries()) {
    const own = wire.strings[0]!.section;
    if (isFirst || own !== section)
      rows.push({
        band: own === undefined ? say('In no section') : say('Section {section}', { section: own }),
      });
    section = own;
    isFirst = false;
    rows.push({
      cells: [
        String(index + 1),
        wire.strings.map(stringWords).join(' – '),
        say(joinedInColumn[wire.joined]),
        lengthText(wire.diameter, unit, 'diameter', language),
        ...parts.map(([part]) =>
          wire.cut.parts[part] === 0
            ? { absent: say('none') }
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
      { heading: say('wire'), align: 'right', share: 26, tone: 'quiet' },
      { heading: say('[of a wire] strings'), align: 'left', share: 69 },
      { heading: say('[of a wire] made as'), align: 'left', share: 38 },
      { heading: say('[of wire, in a narrow column] diameter, {unit}', { unit }), align: 'right', share: 40 },
      ...parts.map(([, name]) => ({
        group: say('[of a wire] parts, {unit}', { unit }),
        heading: say(name),
        align: 'right' as const,
        share: 36,
        tone: 'quiet' as const,
      })),
      {
        group: say('[length of a wire] cut'),
        heading: unit,
        align: 'right',
        share: 36,
        page: 'core/rescale/loop-plan',
      },
      {
        group: say('[length of a wire] cut'),
        heading: otherUnit(unit),
        align: 'right',
        share: 30,
        tone: 'quiet',
      },
      { heading: say('[of a length] taken, not read'), align: 'left', share: 71, tone: 'quiet' },
    ],
    rows,
    remarks: [say('A length without a remark was read at its own note. “none”: the wire has no such part.')],
  };
}
