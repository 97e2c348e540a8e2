import { noteName } from '@becket/core';
import type { Section } from '@becket/journal';
import { useMemo } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { useWidth } from '../../parts/use-width.ts';
import { CompassFrame, useCompassAxes, Whiskers } from '../../piano/compass-axes.tsx';
import type { ComparisonChartData } from './compare-state.ts';

interface Props extends ComparisonChartData {
  readonly firstKey: number;
  readonly lastKey: number;
  readonly sections: readonly Section[];
  readonly selected: number | undefined;
  readonly onSelect: (key: number) => void;
}

/** A hollow ring, a filled diamond, an upright cross: told apart without colour too. */
const marks = ['before', 'after', 'beside'] as const;
const signs = ['○', '◆', '+'] as const;

/** Figures of two or three scales on one pair of axes. */
export function ComparisonChart(props: Props) {
  const language = useLanguage();
  const { say } = language;
  const { question, axis, scale, basis, series, firstKey, lastKey, sections, selected, onSelect } = props;
  const [frame, width] = useWidth<HTMLElement>();
  const points = useMemo(() => series.flatMap((one) => one.points), [series]);
  const axes = useCompassAxes({ points, from: 'least', scale, width, firstKey, lastKey });
  const { x, y } = axes;
  const keys = series[0]?.points.map(({ key }) => key) ?? [];
  const spoken =
    selected === undefined
      ? say('no note chosen')
      : `${noteName(selected)}: ${series.map(({ name, points }) => `${name} ${points.find(({ key }) => key === selected)?.words ?? say('not computed')}`).join('; ')}`;

  return (
    <figure className="chart" ref={frame}>
      <h3>{question}</h3>
      <p className="chart-spoken" aria-live="off">
        {selected === undefined ? (
          <span className="faint">{say('Tap the chart to see a note.')}</span>
        ) : (
          spoken
        )}
      </p>
      <CompassFrame
        axes={axes}
        title={question}
        axis={axis}
        sections={sections}
        keys={keys}
        selected={selected}
        spoken={spoken}
        onSelect={onSelect}
      >
        {series.map(({ points: own }, which) => (
          <g key={marks[which]} className={`chart-series ${marks[which]}`}>
            <Whiskers axes={axes} points={own} />
            {own.map(({ key, value }) =>
              which === 0 ? (
                <circle key={key} cx={x(key)} cy={y(value)} r={3.6} />
              ) : which === 1 ? (
                <path key={key} d={`M${x(key)} ${y(value) - 4}l4 4l-4 4l-4 -4z`} />
              ) : (
                <path key={key} d={`M${x(key)} ${y(value) - 4.5}v9m-4.5 -4.5h9`} />
              ),
            )}
          </g>
        ))}
      </CompassFrame>
      <figcaption className="faint">
        {series.map(({ name }, which) => (
          <span key={marks[which]}>
            <span aria-hidden="true">{signs[which]}</span> {name};{' '}
          </span>
        ))}
        {say('whiskers show one standard uncertainty. {basis}', { basis })}
      </figcaption>
    </figure>
  );
}
