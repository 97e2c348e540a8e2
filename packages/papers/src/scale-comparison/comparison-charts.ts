import { inPoundsForce, type NoteAnalysis, newtons, noteName, type ScaleAnalysis, type Language } from '@becket/core';
import type { Job } from '@becket/journal';
import { axisOver } from '../chart/axis.ts';
import type { LengthUnit } from '../figures/lengths.ts';
import type { Axis, Chart } from '../page-tree.ts';

/** Tension, break share and B of two scales on the same axes. */
export function comparisonCharts(
  job: Job,
  { before, after, name }: { before: ScaleAnalysis; after: ScaleAnalysis; name: string },
  unit: LengthUnit,
  language: Language,
): Chart[] {
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
      { name: 'as found', mark: 'ring' as const, points: points(before) },
      { name, mark: 'dot' as const, points: points(after) },
    ];
    const y = axisOver(
      series.flatMap((one) => one.points.map(([, at]) => at)),
      axis,
      language,
    );
    return y === undefined
      ? []
      : [{ is: 'chart', title, words, x: keyAxis(keys), y, bands: bandsOf(job), series }];
  };
  return [
    ...chart(
      'How hard does each string pull?',
      'Tension of one string against key number, as found and as proposed. A level run is an even one; steps belong where one string becomes two or two become three.',
      { name: unit === 'mm' ? 'tension, N' : 'tension, lbf', scale: 'linear' },
      ({ tension }) => (unit === 'mm' ? tension : inPoundsForce(newtons(tension))),
    ),
    ...chart(
      'How near is each string to breaking?',
      'Tension as a share of the break load against key number, as found and as proposed.',
      { name: 'share of the break load, %', scale: 'linear' },
      ({ breakShare }) => breakShare * 100,
    ),
    ...chart(
      'How inharmonic is each string?',
      'Inharmonicity B against key number on a logarithmic scale, as found and as proposed.',
      { name: 'B', scale: 'log' },
      ({ inharmonicity }) => inharmonicity,
    ),
  ];
}

function keyAxis(keys: readonly number[]): Axis {
  const [first, last] = [Math.min(...keys), Math.max(...keys)];
  const ticks = Array.from({ length: 8 }, (_, octave) => 4 + 12 * octave).filter(
    // A tick too near an end would write over it.
    (key) => Math.min(key - first, last - key) > (last - first) / 12,
  );
  return {
    name: 'key',
    scale: 'linear',
    from: first - 0.5,
    to: last + 0.5,
    ticks: [first, ...ticks, last].map((at) => ({ at, text: `${at} ${noteName(at)}` })),
  };
}

const bandsOf = ({ sections }: Job): Chart['bands'] =>
  sections.map(({ section, firstKey, lastKey }) => ({ from: firstKey, to: lastKey, name: section }));
