import {
  inPoundsForce,
  type Language,
  type LengthUnit,
  type NoteAnalysis,
  newtons,
  type ScaleAnalysis,
} from '@becket/core';
import type { Job } from '@becket/journal';
import { axisOver } from '../chart/axis.ts';
import { keyAxis, sectionBands } from '../chart/key-axis.ts';
import type { Axis, Chart } from '../page-tree.ts';

/** Tension, break share and B of two scales on the same axes. */
export function comparisonCharts(
  job: Job,
  { before, after, name }: { before: ScaleAnalysis; after: ScaleAnalysis; name: string },
  unit: LengthUnit,
  language: Language,
): Chart[] {
  const { say } = language;
  const keys = [...before.notes, ...after.notes].map(({ key }) => key);
  const chart = (
    title: string,
    words: string,
    axis: { name: string; scale: Axis['scale'] },
    value: (note: NoteAnalysis) => number,
  ): Chart[] => {
    // Six digits keep the marks in place and the saved trees readable.
    const points = ({ notes }: ScaleAnalysis) =>
      notes.map((note) => [note.key, Number(value(note).toPrecision(6))] as const);
    const series = [
      { name: say('as found'), mark: 'ring' as const, points: points(before) },
      { name, mark: 'dot' as const, points: points(after) },
    ];
    const y = axisOver(
      series.flatMap((one) => one.points.map(([, at]) => at)),
      axis,
      language,
    );
    return y === undefined
      ? []
      : [
          {
            is: 'chart',
            title,
            words,
            x: keyAxis(Math.min(...keys), Math.max(...keys), language),
            y,
            bands: sectionBands(job),
            series,
          },
        ];
  };
  return [
    ...chart(
      say('How hard does each string pull?'),
      say(
        'Tension of one string against key number, as found and as proposed. A level run is an even one; steps belong where one string becomes two or two become three.',
      ),
      { name: `${say('tension')}, ${unit === 'mm' ? 'N' : 'lbf'}`, scale: 'linear' },
      ({ tension }) => (unit === 'mm' ? tension : inPoundsForce(newtons(tension))),
    ),
    ...chart(
      say('How near is each string to breaking?'),
      say('Tension as a share of the break load against key number, as found and as proposed.'),
      { name: say('share of the break load, %'), scale: 'linear' },
      ({ breakShare }) => breakShare * 100,
    ),
    ...chart(
      say('How inharmonic is each string?'),
      say('Inharmonicity B against key number on a logarithmic scale, as found and as proposed.'),
      { name: 'B', scale: 'log' },
      ({ inharmonicity }) => inharmonicity,
    ),
  ];
}
