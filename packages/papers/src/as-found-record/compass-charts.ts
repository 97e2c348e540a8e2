import type { Language, LengthUnit } from '@becket/core';
import type { AsFoundNote, Job, ReadingQuantityName } from '@becket/journal';
import { axisOver } from '../chart/axis.ts';
import { keyAxis, sectionBands } from '../chart/key-axis.ts';
import { lengthIn } from '../figures/lengths.ts';
import type { Axis, Chart, ChartSeries } from '../page-tree.ts';

/** Wire and length over the whole compass, one question each: a chart appears once it has a point. */
export function compassCharts(
  job: Job,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Chart[] {
  const { say } = language;
  const chart = (
    title: string,
    words: string,
    scale: Axis['scale'],
    name: string,
    series: readonly ChartSeries[],
  ): Chart[] => {
    const drawn = series.filter(({ points }) => points.length > 0);
    const values = drawn.flatMap(({ points }) => points.map(([, value]) => value));
    const y = axisOver(values, { name: `${name}, ${unit}`, scale }, language);
    return y === undefined
      ? []
      : [
          {
            is: 'chart',
            title,
            words,
            x: keyAxis(notes[0]?.key ?? 1, notes.at(-1)?.key ?? 88, language),
            y,
            bands: sectionBands(job),
            series: drawn,
          },
        ];
  };
  const of = (quantity: ReadingQuantityName) => pointsOf(notes, quantity, unit);
  return [
    ...chart(
      say('Steel: plain wire and cores'),
      say(
        'Diameter of the plain wire and of the cores of the wound strings, against key number. A step between neighbours is a change of size; a mark off the run of its neighbours is worth another look.',
      ),
      'linear',
      say('diameter'),
      [
        { name: say('plain wire'), mark: 'dot', points: of('wire-diameter') },
        { name: say('core'), mark: 'ring', points: of('core-diameter') },
      ],
    ),
    ...chart(
      say('Wound strings: over all'),
      say('Diameter over all of the wound strings, against key number.'),
      'linear',
      say('diameter'),
      [
        { name: say('over all'), mark: 'square', points: of('over-all-diameter') },
        { name: say('over inner layer'), mark: 'cross', points: of('inner-layer-diameter') },
      ],
    ),
    ...chart(
      say('Speaking length'),
      say(
        'Speaking length of each note against key number, on a logarithmic scale: a run that shortens by the same share from note to note is a straight line.',
      ),
      'log',
      say('length'),
      [{ name: say('speaking length'), mark: 'dot', points: of('speaking-length') }],
    ),
  ];
}

function pointsOf(
  notes: readonly AsFoundNote[],
  quantity: ReadingQuantityName,
  unit: LengthUnit,
): ChartSeries['points'] {
  return notes.flatMap((note) => {
    const figure = note.figures[quantity];
    // Four decimals keep the marks in place and the saved trees readable.
    return figure === undefined ? [] : [[note.key, Number(lengthIn(figure.value, unit).toFixed(4))] as const];
  });
}
