import {
  inInchPounds,
  inNewtonMetres,
  type Language,
  type LengthUnit,
  type Message,
  message,
  type NewtonMetres,
  noteName,
  sayKnown,
} from '@becket/core';
import type {
  TorqueFigures,
  TorqueSectionFigures,
  TurningKind,
  ZoneFigures,
} from '../appraisal-report/appraisal-figures.ts';
import { torqueCells, torqueColumns, torqueInWords, torqueText, torqueUnit } from '../figures/torques.ts';
import type { Block, Cell, Chart, Table } from '../page-tree.ts';

/** The torque map by section, how grips are spread, and what the sample cannot say. */
export function torqueBlocks(
  torque: TorqueFigures | undefined,
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say } = language;
  const heading: Block = { is: 'heading', level: 2, text: say('Torque of the tuning pins') };
  if (torque === undefined || torque.pins.length === 0)
    return [heading, { is: 'paragraph', text: say('No pin torque was read with a note yet.') }];
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
  const { say } = language;
  return {
    is: 'table',
    title: say('Grip by section'),
    remarks: [
      [
        say('Grip: turning moment that the block alone holds, the pull of the string taken out ({page}).', {
          page: 'core/pins/grip-estimate',
        }),
        say('Low: under {limit}, {source}.', {
          limit: torqueInWords(lowBelow, unit, language),
          source: sayKnown(lowBelowFrom, language),
        }),
        intervalWords(sections, language),
      ].join(' '),
      ...(zone === undefined
        ? []
        : [
            say(
              'Missed: the chance that {count, plural, one {# pin} other {# pins}} in a row that hold badly lie where no pin was read; over the whole field {chance}.',
              { count: zone.size, chance: percent(zone.chanceMissed, language) },
            ),
          ]),
    ],
    columns: [
      { heading: say('section'), align: 'left', share: 75 },
      { heading: say('pins'), align: 'right', share: 28 },
      { heading: say('[pins] read'), align: 'right', share: 28 },
      { heading: say('with grip'), align: 'right', share: 44 },
      { heading: say('[of pins] low'), align: 'right', share: 26 },
      ...torqueColumns(say('mean grip'), unit, 'core/pins/section-mean'),
      { heading: say('interval, {unit}', { unit: torqueUnit(unit) }), align: 'centre', share: 76 },
      { heading: say('lowest'), align: 'left', share: 100 },
      { heading: say('[chance of a zone] missed'), align: 'right', share: 36, page: 'core/pins/missed-zone' },
      { heading: say('read next'), align: 'left', share: 76 },
    ],
    rows: sections.map((section) => ({ cells: sectionCells(section, unit, language) })),
  };
}

/** How the intervals come about, with the level they were worked out for where there is one. */
function intervalWords(sections: TorqueFigures['sections'], { say, fixed }: Language): string {
  const level = sections.find(({ mean }) => mean?.interval !== undefined)?.mean?.interval?.level;
  return level === undefined
    ? say(
        'Interval of the mean, with what wrench and friction add to all pins alike; none where fewer than three pins have a grip.',
      )
    : say(
        'Interval of the mean: {percent} %, with what wrench and friction add to all pins alike; none where fewer than three pins have a grip.',
        { percent: fixed(level * 100, 0) },
      );
}

function sectionCells(
  { section, pins, read, withGrip, low, mean, lowest, zone }: TorqueSectionFigures,
  unit: LengthUnit,
  language: Language,
): Cell[] {
  const { say } = language;
  const interval = mean?.interval;
  return [
    section,
    String(pins),
    String(read),
    String(withGrip),
    withGrip === 0 ? '' : String(low),
    ...(mean === undefined
      ? [{ absent: read === 0 ? say('not read') : say('no grip'), across: 3 }]
      : [
          ...torqueCells(mean.mean, unit, language),
          interval === undefined
            ? { absent: say('[pins] too few') }
            : say('{low} to {high}', {
                low: torqueText(interval.low, unit, language),
                high: torqueText(interval.high, unit, language),
              }),
        ]),
    lowest?.grip === undefined
      ? ''
      : say('{torque} at {pin}', {
          torque: torqueText(lowest.grip.grip, unit, language),
          pin: lowest.name,
        }),
    zone === undefined ? '' : percent(zone.chanceMissed, language),
    nextPin(zone, language),
  ];
}

const percent = (share: number, { fixed }: Language): string => `${fixed(share * 100, 0)} %`;

function nextPin(zone: ZoneFigures | undefined, { say }: Language): string {
  return zone?.next === undefined
    ? ''
    : say('{note} string {string}', {
        note: noteName(zone.next.key),
        string: String(zone.next.string),
      });
}

const kindInWords: Readonly<Record<TurningKind, Message>> = {
  sharp: message('string on, turned sharp'),
  flat: message('string on, turned flat'),
  slack: message('string slack or off'),
  'not said': message('not said how'),
};

/** Readings as they were taken: sharp-going, flat-going and slack are never put together. */
function kindTable({ sections }: TorqueFigures, unit: LengthUnit, language: Language): Table {
  const { say } = language;
  return {
    is: 'table',
    width: 0.62,
    title: say('Readings by how they were taken'),
    columns: [
      { heading: say('section'), align: 'left', share: 75 },
      { heading: say('[a reading was taken] how'), align: 'left', share: 130 },
      { heading: say('readings'), align: 'right', share: 44 },
      ...torqueColumns(say('mean reading'), unit),
    ],
    rows: sections.flatMap(({ section, byKind }) =>
      byKind.map(({ kind, count, mean }) => ({
        cells: [section, say(kindInWords[kind]), String(count), ...torqueCells(mean, unit, language)],
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
  const { say } = language;
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
    title: say('Pins by grip'),
    words: say('Number of pins by grip, in steps of {step}. Grip under {limit} is low.', {
      step: torqueInWords((first.to - first.from) as NewtonMetres, unit, language),
      limit: torqueInWords(lowBelow, unit, language),
    }),
    x: {
      name: say('grip, {unit}', { unit: torqueUnit(unit) }),
      scale: 'linear',
      from: rounded(inUnit(first.from)),
      to: rounded(inUnit(last.to)),
      ticks: ends
        .filter((_, index) => index % step === 0)
        .map((at) => ({ at: rounded(inUnit(at)), text: language.fixed(inUnit(at), 0) })),
    },
    y: {
      name: say('pins'),
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
        name: say('pins'),
        mark: 'bar',
        barWidth: rounded(inUnit((first.to - first.from) as NewtonMetres)),
        points: bins.map(
          ({ from, to, pins }) => [rounded((inUnit(from) + inUnit(to)) / 2), pins.length] as const,
        ),
      },
    ],
  };
}
