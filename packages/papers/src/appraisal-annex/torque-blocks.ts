import { inInchPounds, inNewtonMetres, type Language, type NewtonMetres, noteName } from '@becket/core';
import type {
  TorqueFigures,
  TorqueSectionFigures,
  TurningKind,
  ZoneFigures,
} from '../appraisal-report/appraisal-figures.ts';
import { counted } from '../every-paper/running-lines.ts';
import type { LengthUnit } from '../figures/lengths.ts';
import { torqueCells, torqueColumns, torqueInWords, torqueText, torqueUnit } from '../figures/torques.ts';
import type { Block, Cell, Chart, Table } from '../page-tree.ts';

/** The torque map by section, how grips are spread, and what the sample cannot say. */
export function torqueBlocks(
  torque: TorqueFigures | undefined,
  unit: LengthUnit,
  language: Language,
): Block[] {
  const heading: Block = { is: 'heading', level: 2, text: 'Torque of the tuning pins' };
  if (torque === undefined || torque.pins.length === 0)
    return [heading, { is: 'paragraph', text: 'No pin torque was read with a note yet.' }];
  const { pattern, questions, season } = torque;
  const chart = gripChart(torque, unit, language);
  return [
    heading,
    sectionTable(torque, unit, language),
    kindTable(torque, unit, language),
    ...(chart === undefined ? [] : [chart]),
    {
      is: 'paragraph',
      text: [pattern.looksLike, pattern.oftenMeans, pattern.howSure].filter((text) => text !== '').join(' '),
    },
    ...(questions.length + season.cautions.length === 0
      ? []
      : [
          {
            is: 'list',
            marks: 'dots',
            items: [...questions.map(({ sentence }) => sentence), ...season.cautions],
          } as const,
        ]),
  ];
}

function sectionTable(
  { sections, lowBelow, lowBelowFrom, zone }: TorqueFigures,
  unit: LengthUnit,
  language: Language,
): Table {
  return {
    is: 'table',
    title: 'Grip by section',
    remarks: [
      `Grip: turning moment that the block alone holds, the pull of the string taken out (core/pins/grip-estimate). Low: under ${torqueInWords(lowBelow, unit, language)}, ${lowBelowFrom}. Interval of the mean${levelText(sections)}, with what wrench and friction add to all pins alike; none where fewer than three pins have a grip.`,
      ...(zone === undefined
        ? []
        : [
            `Missed: the chance that ${counted(zone.size, 'pin', 'pins')} in a row that hold badly lie where no pin was read; over the whole field ${percent(zone.chanceMissed)}.`,
          ]),
    ],
    columns: [
      { heading: 'section', align: 'left', share: 75 },
      { heading: 'pins', align: 'right', share: 28 },
      { heading: 'read', align: 'right', share: 28 },
      { heading: 'with grip', align: 'right', share: 44 },
      { heading: 'low', align: 'right', share: 26 },
      ...torqueColumns('mean grip', unit, 'core/pins/section-mean'),
      { heading: `interval, ${torqueUnit(unit)}`, align: 'centre', share: 76 },
      { heading: 'lowest', align: 'left', share: 100 },
      { heading: 'missed', align: 'right', share: 36, page: 'core/pins/missed-zone' },
      { heading: 'read next', align: 'left', share: 76 },
    ],
    rows: sections.map((section) => ({ cells: sectionCells(section, unit, language) })),
  };
}

/** The level that the intervals were worked out for; nothing where there is none. */
function levelText(sections: TorqueFigures['sections']): string {
  const level = sections.find(({ mean }) => mean?.interval !== undefined)?.mean?.interval?.level;
  return level === undefined ? '' : `: ${(level * 100).toFixed(0)} %`;
}

function sectionCells(
  { section, pins, read, withGrip, low, mean, lowest, zone }: TorqueSectionFigures,
  unit: LengthUnit,
  language: Language,
): Cell[] {
  const interval = mean?.interval;
  return [
    section,
    String(pins),
    String(read),
    String(withGrip),
    withGrip === 0 ? '' : String(low),
    ...(mean === undefined
      ? [{ absent: read === 0 ? 'not read' : 'no grip', across: 3 }]
      : [
          ...torqueCells(mean.mean, unit, language),
          interval === undefined
            ? { absent: 'too few' }
            : `${torqueText(interval.low, unit, language)} to ${torqueText(interval.high, unit, language)}`,
        ]),
    lowest?.grip === undefined ? '' : `${torqueText(lowest.grip.grip, unit, language)} at ${lowest.name}`,
    zone === undefined ? '' : percent(zone.chanceMissed),
    nextPin(zone),
  ];
}

const percent = (share: number): string => `${(share * 100).toFixed(0)} %`;

function nextPin(zone: ZoneFigures | undefined): string {
  return zone?.next === undefined ? '' : `${noteName(zone.next.key)} string ${zone.next.string}`;
}

const kindInWords: Readonly<Record<TurningKind, string>> = {
  sharp: 'string on, turned sharp',
  flat: 'string on, turned flat',
  slack: 'string slack or off',
  'not said': 'not said how',
};

/** Readings as they were taken: sharp-going, flat-going and slack are never put together. */
function kindTable({ sections }: TorqueFigures, unit: LengthUnit, language: Language): Table {
  return {
    is: 'table',
    width: 0.62,
    title: 'Readings by how they were taken',
    columns: [
      { heading: 'section', align: 'left', share: 75 },
      { heading: 'how', align: 'left', share: 130 },
      { heading: 'readings', align: 'right', share: 44 },
      ...torqueColumns('mean reading', unit),
    ],
    rows: sections.flatMap(({ section, byKind }) =>
      byKind.map(({ kind, count, mean }) => ({
        cells: [section, kindInWords[kind], String(count), ...torqueCells(mean, unit, language)],
      })),
    ),
  };
}

/** How many pins have which grip, in steps of the map. */
function gripChart(
  { bins, lowBelow }: TorqueFigures,
  unit: LengthUnit,
  language: Language,
): Chart | undefined {
  const [first] = bins;
  const last = bins.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const inUnit = (torque: NewtonMetres) => (unit === 'mm' ? inNewtonMetres(torque) : inInchPounds(torque));
  const rounded = (value: number) => Number(value.toFixed(4));
  const most = Math.max(...bins.map(({ pins }) => pins.length));
  const step = Math.max(1, Math.ceil(bins.length / 12));
  const countStep = Math.max(1, Math.ceil(most / 5));
  const ends = [...bins.map(({ from }) => from), last.to];
  return {
    is: 'chart',
    title: 'Pins by grip',
    words: `Number of pins by grip, in steps of ${torqueInWords((first.to - first.from) as NewtonMetres, unit, language)}. Grip under ${torqueInWords(lowBelow, unit, language)} is low.`,
    x: {
      name: `grip, ${torqueUnit(unit)}`,
      scale: 'linear',
      from: rounded(inUnit(first.from)),
      to: rounded(inUnit(last.to)),
      ticks: ends
        .filter((_, index) => index % step === 0)
        .map((at) => ({ at: rounded(inUnit(at)), text: inUnit(at).toFixed(0) })),
    },
    y: {
      name: 'pins',
      scale: 'linear',
      from: 0,
      to: Math.ceil(most / countStep) * countStep,
      ticks: Array.from({ length: Math.ceil(most / countStep) + 1 }, (_, index) => ({
        at: index * countStep,
        text: String(index * countStep),
      })),
    },
    bands: [],
    series: [
      {
        name: 'pins',
        mark: 'bar',
        barWidth: rounded(inUnit((first.to - first.from) as NewtonMetres)),
        points: bins.map(
          ({ from, to, pins }) => [rounded((inUnit(from) + inUnit(to)) / 2), pins.length] as const,
        ),
      },
    ],
  };
}
