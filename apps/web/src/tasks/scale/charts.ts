import {
  english,
  inPoundsForce,
  type Language,
  type NoteAnalysis,
  newtons,
  noteName,
  type ScaleAnalysis,
  sayKnown,
} from '@becket/core';
import { exponentText } from '../../parts/exponent-text.ts';
import { forceText } from '../../parts/force-text.ts';
import type { LengthUnit } from '../../parts/length-text.ts';

/** One string's figure in a chart. Values are in the unit of the axis. */
export interface ChartPoint {
  readonly key: number;
  readonly note: string;
  readonly kind: 'plain' | 'wound';
  readonly value: number;
  /** One standard uncertainty below and above; undefined where it is not known. */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** The figure with its unit, as it is read out. */
  readonly words: string;
  /** True where the figure rests on something that has to be said: outside its table, for one. */
  readonly isDoubtful: boolean;
}

/** A chart answers one question. */
export interface CompassChartData {
  readonly name: 'tension' | 'break-share' | 'inharmonicity';
  readonly question: string;
  readonly axis: string;
  readonly scale: 'linear' | 'log';
  readonly points: readonly ChartPoint[];
  /** What the figures rest on. */
  readonly basis: string;
}

export function scaleCharts(
  analysis: ScaleAnalysis,
  unit: LengthUnit,
  language: Language = english,
): CompassChartData[] {
  const { fixed, list, say } = language;
  const tensionIn = (force: number) => (unit === 'mm' ? force : inPoundsForce(newtons(force)));
  const tables = [...new Set(analysis.notes.map(({ strengthTable }) => strengthTable))];
  const remark = analysis.notes[0]?.strengthRemark ?? '';
  const outside = analysis.notes.filter(({ isWithinStrengthTable }) => !isWithinStrengthTable);
  const methods = new Set(analysis.notes.map(({ inharmonicityMethod }) => inharmonicityMethod));
  return [
    {
      name: 'tension',
      question: say('How hard does each string pull?'),
      axis: unit === 'mm' ? say('tension of one string (N)') : say('tension of one string (lbf)'),
      scale: 'linear',
      basis: say('At the pitch of equal temperament; every string of a unison is taken to be alike.'),
      points: analysis.notes.map((note) =>
        point(note, {
          value: tensionIn(note.tension),
          spread: tensionIn(note.standardUncertainties?.tension ?? 0),
          words: forceText(note.tension, unit),
          isDoubtful: false,
        }),
      ),
    },
    {
      name: 'break-share',
      question: say('How near is each string to breaking?'),
      axis: say('tension as a share of the break load (%)'),
      scale: 'linear',
      basis: [
        say('Break load by the table {tables}.', {
          tables: list(tables.map((table) => sayKnown(table, language))),
        }),
        sayKnown(remark, language),
        ...(outside.length === 0
          ? []
          : [
              say('{notes} lie outside the table: their figures extend it.', {
                notes: outside.map(({ key }) => noteName(key)).join(', '),
              }),
            ]),
      ].join(' '),
      points: analysis.notes.map((note) =>
        point(note, {
          value: note.breakShare * 100,
          spread: (note.standardUncertainties?.breakShare ?? 0) * 100,
          words: say('{share} % of the break load', { share: fixed(note.breakShare * 100, 0) }),
          isDoubtful: !note.isWithinStrengthTable,
        }),
      ),
    },
    {
      name: 'inharmonicity',
      question: say('How inharmonic is each string?'),
      axis: say('inharmonicity B, logarithmic'),
      scale: 'log',
      basis: `${say('B as in f = n·f₁·√(1 + B·n²).')} ${[...methods].map((method) => methodWords(method, language)).join(' ')}`,
      points: analysis.notes.map((note) =>
        point(note, {
          value: note.inharmonicity,
          spread: note.standardUncertainties?.inharmonicity ?? 0,
          words: `B = ${exponentText(note.inharmonicity, language)}`,
          isDoubtful: note.note.string.kind === 'wound' && note.inharmonicityMethod === 'core formula',
        }),
      ),
    },
  ];
}

function methodWords(method: NoteAnalysis['inharmonicityMethod'], { say }: Language = english): string {
  return method === 'core formula'
    ? say('Plain strings by the core formula.')
    : say('Wound strings from their exact modes, fitted over partials 1 to 8.');
}

interface Drawn {
  readonly value: number;
  readonly spread: number;
  readonly words: string;
  readonly isDoubtful: boolean;
}

function point(note: NoteAnalysis, { value, spread, words, isDoubtful }: Drawn): ChartPoint {
  const hasSpread = note.standardUncertainties !== undefined && spread > 0;
  return {
    key: note.key,
    note: noteName(note.key),
    kind: note.note.string.kind,
    value,
    low: hasSpread ? value - spread : undefined,
    high: hasSpread ? value + spread : undefined,
    words,
    isDoubtful,
  };
}
