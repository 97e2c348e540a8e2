import {
  inDegrees,
  inInches,
  inMillimetres,
  type Language,
  type LengthUnit,
  type Metres,
  noteName,
} from '@becket/core';
import type { TorqueSectionFigures } from '../appraisal-report/appraisal-figures.ts';
import { lengthInWords } from '../figures/lengths.ts';
import { torqueCells, torqueColumns, torqueText, torqueUnit } from '../figures/torques.ts';
import type { Block, Cell } from '../page-tree.ts';
import { offsetText } from '../settling-log/offset-text.ts';
import type { BearingSection, FinalPitch } from './hand-over-figures.ts';

/** Grip by section with its interval, as strung. */
export function torqueBlocks(
  sections: readonly TorqueSectionFigures[],
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say, fixed } = language;
  if (sections.every(({ read }) => read === 0))
    return [{ is: 'paragraph', text: say('Unknown: no pin torque was read on the new strings.') }];
  const level = sections.find(({ mean }) => mean?.interval !== undefined)?.mean?.interval?.level;
  return [
    {
      is: 'table',
      remarks: [
        say('Grip: what the block alone holds, the pull of the string taken out.'),
        level === undefined
          ? say('An interval of the mean needs three pins with a grip.')
          : say('Interval of the mean: {percent} %; it needs three pins with a grip.', {
              percent: fixed(level * 100, 0),
            }),
      ],
      columns: [
        { heading: say('section'), align: 'left', share: 70 },
        { heading: say('pins'), align: 'right', share: 28 },
        { heading: say('[of pins] read'), align: 'right', share: 48 },
        ...torqueColumns(say('mean grip'), unit, 'core/pins/section-mean'),
        { heading: say('interval, {unit}', { unit: torqueUnit(unit) }), align: 'centre', share: 80 },
        { heading: say('lowest, {unit}', { unit: torqueUnit(unit) }), align: 'left', share: 90 },
      ],
      rows: sections.map((section) => ({ cells: torqueSectionCells(section, unit, language) })),
    },
  ];
}

function torqueSectionCells(
  { section, pins, read, mean, lowest, byKind }: TorqueSectionFigures,
  unit: LengthUnit,
  language: Language,
): Cell[] {
  const { say } = language;
  const start = [section, String(pins), String(read)];
  if (mean === undefined) {
    // Without the way a pin was turned, or the pull of its string, a torque is not a grip; its mean is still told.
    const raw = byKind.map(({ mean: torque }) => torqueText(torque, unit, language));
    return [
      ...start,
      { absent: read === 0 ? say('not read') : say('no grip can be told'), across: 3 },
      raw.length === 0 ? '' : say('as read: {torques}', { torques: raw.join(', ') }),
    ];
  }
  return [
    ...start,
    ...torqueCells(mean.mean, unit, language),
    mean.interval === undefined
      ? { absent: say('[of pins] too few') }
      : say('{low} to {high}', {
          low: torqueText(mean.interval.low, unit, language),
          high: torqueText(mean.interval.high, unit, language),
        }),
    lowest?.grip === undefined
      ? ''
      : say('{torque} at {pin}', {
          torque: torqueText(lowest.grip.grip, unit, language),
          pin: lowest.name,
        }),
  ];
}

/** Bearing by section: angles, and rises over the span they were read over. */
export function bearingBlocks(
  sections: readonly BearingSection[],
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say, fixed } = language;
  if (sections.every(({ angles, rises }) => angles === undefined && rises.length === 0))
    return [{ is: 'paragraph', text: say('Unknown: no bearing was read on the new strings.') }];
  const rows = sections.flatMap(({ section, angles, rises }): Cell[][] => {
    const kinds: Cell[][] = [
      ...(angles === undefined
        ? []
        : [
            [
              section,
              say('angle, degrees'),
              String(angles.read),
              fixed(inDegrees(angles.mean), 2),
              say('{low} to {high}', {
                low: fixed(inDegrees(angles.lowest), 2),
                high: fixed(inDegrees(angles.highest), 2),
              }),
            ],
          ]),
      ...rises.map(({ span, read, mean, lowest, highest }): Cell[] => [
        section,
        span === undefined
          ? say('rise, {unit}, span not said', { unit })
          : say('rise, {unit}, over {span}', {
              unit,
              span: lengthInWords(span, 'length', unit, language),
            }),
        String(read),
        riseText(mean, unit, language),
        say('{low} to {high}', {
          low: riseText(lowest, unit, language),
          high: riseText(highest, unit, language),
        }),
      ]),
    ];
    return kinds.length === 0 ? [[section, { absent: say('not read'), across: 4 }]] : kinds;
  });
  return [
    {
      is: 'table',
      width: 0.9,
      columns: [
        { heading: say('section'), align: 'left', share: 60 },
        { heading: say('[bearing] what'), align: 'left', share: 140 },
        { heading: say('[number of readings] n'), align: 'right', share: 20 },
        { heading: say('mean'), align: 'right', share: 40 },
        { heading: say('lowest to highest'), align: 'right', share: 70 },
      ],
      rows: rows.map((cells) => ({ cells })),
    },
  ];
}

/** A gauge over the bridge reads hundredths of a millimetre, or thousandths of an inch. */
const riseText = (rise: Metres, unit: LengthUnit, { fixed }: Language): string =>
  unit === 'mm' ? fixed(inMillimetres(rise), 2) : fixed(inInches(rise), 3);

/** Where each section was left in its last pass, and what was read apart from any. */
export function pitchBlocks(sections: readonly FinalPitch[], language: Language): Block[] {
  const { say, day } = language;
  if (sections.every(({ left, read }) => left === undefined && read.length === 0))
    return [{ is: 'paragraph', text: say('Unknown: no pitch was read on the new strings.') }];
  return [
    {
      is: 'table',
      width: 0.9,
      columns: [
        { heading: say('section'), align: 'left', share: 60 },
        { heading: say('left at, cents'), align: 'right', share: 50 },
        { heading: say('[a pass] in'), align: 'left', share: 80 },
        { heading: say('read apart from a pass, cents'), align: 'left', share: 130 },
      ],
      rows: sections.map(({ section, left, read }) => ({
        cells: [
          section,
          ...(left === undefined
            ? [{ absent: say('unknown'), across: 2 }]
            : [
                offsetText(left.offset_cents, language),
                say('pass {pass}, {day}', { pass: left.pass, day: day(left.on) }),
              ]),
          read
            .map(({ key, offset_cents }) => `${noteName(key)} ${offsetText(offset_cents, language)}`)
            .join('; '),
        ],
      })),
    },
  ];
}
