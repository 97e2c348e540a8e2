import type { Language } from '@becket/core';
import { offsetOf, type Settling } from '@becket/journal';
import { axisOver } from '../chart/axis.ts';
import type { Chart, ChartSeries } from '../page-tree.ts';

const marks = ['dot', 'ring', 'square', 'cross'] as const;

/** Where the sections stood before and after each pass; four to a chart, so that each has a mark of its own. */
export function settlingChart({ passes }: Settling, language: Language): Chart[] {
  const { say } = language;
  const names = [...new Set(passes.flatMap(({ sections }) => sections.map(({ section }) => section)))];
  const series = names
    .map(
      (name, index): ChartSeries => ({
        name,
        mark: marks[index % marks.length]!,
        isJoined: true,
        points: passes.flatMap(({ sections }, turn): (readonly [number, number])[] => {
          const own = sections.find(({ section }) => section === name);
          const [before, after] = [offsetOf(own?.before), offsetOf(own?.after)];
          return [
            ...(before === undefined ? [] : [[2 * turn, rounded(before.offset)] as const]),
            ...(after === undefined ? [] : [[2 * turn + 1, rounded(after.offset)] as const]),
          ];
        }),
      }),
    )
    .filter(({ points }) => points.length > 0);
  const y = axisOver(
    [0, ...series.flatMap(({ points }) => points.map(([, offset]) => offset))],
    {
      name: say('cents from pitch'),
      scale: 'linear',
    },
    language,
  );
  if (series.length === 0 || y === undefined) return [];
  const ticks = passes.flatMap(({ pass }, turn) => [
    { at: 2 * turn, text: say('{pass} before', { pass }) },
    { at: 2 * turn + 1, text: say('{pass} left', { pass }) },
  ]);
  return Array.from({ length: Math.ceil(series.length / marks.length) }, (_, part) => ({
    is: 'chart' as const,
    title: say('Where did each section stand?'),
    words: say(
      'Offset from pitch of each section before and after each pass. A line that falls from where it was left to the next before has lost that much; a section that has settled no longer falls.',
    ),
    x: {
      name: say('[of settling] pass'),
      scale: 'linear' as const,
      from: -0.5,
      to: 2 * passes.length - 0.5,
      ticks,
    },
    y,
    bands: [],
    series: series.slice(part * marks.length, (part + 1) * marks.length),
  }));
}

/** Six digits keep the marks in place and the saved trees readable. */
const rounded = (value: number): number => Number(value.toPrecision(6));
