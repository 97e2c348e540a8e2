import { keyRangeAt } from '@becket/core';
import type { Section } from '@becket/journal';
import { line } from 'd3-shape';
import { useLanguage } from '../parts/language.tsx';
import '../parts/chart.css';
import { useWidth } from '../parts/use-width.ts';
import { CompassFrame, useCompassAxes, Whiskers } from './compass-axes.tsx';

interface Point {
  readonly key: number;
  readonly note: string;
  readonly kind: 'plain' | 'wound';
  readonly value: number;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly words: string;
  readonly isDoubtful: boolean;
}

interface Props {
  readonly title: string;
  readonly axis: string;
  readonly scale: 'linear' | 'log';
  readonly basis: string;
  readonly points: readonly Point[];
  readonly firstKey: number;
  readonly lastKey: number;
  readonly sections: readonly Section[];
  readonly selected: number | undefined;
  readonly onSelect: (key: number) => void;
}

/** Figures of the strings against the key, with sections and breaks. Drawn at its own size, so that words stay readable. */
export function CompassChart(props: Props) {
  const language = useLanguage();
  const { fixed, say, sayNodes } = language;
  const { title, axis, scale, basis, points, firstKey, lastKey, sections, selected, onSelect } = props;
  const [frame, width] = useWidth<HTMLElement>();

  const axes = useCompassAxes({ points, from: 'zero', scale, width, firstKey, lastKey });
  const { x, y } = axes;
  // A line joins neighbours of one section and one kind: nothing is drawn across a break or a note that is missing.
  const path = line<Point>()
    .x(({ key }) => x(key))
    .y(({ value }) => y(value));
  const chosen = points.find(({ key }) => key === selected);

  const spoken = chosen === undefined ? say('no note chosen') : `${chosen.note}: ${chosen.words}`;
  return (
    <figure className="chart" ref={frame}>
      <h3>{title}</h3>
      <p className="chart-spoken" aria-live="off">
        {chosen === undefined ? (
          <span className="faint">{say('Tap a point to see its string.')}</span>
        ) : (
          <>
            <strong>{chosen.note}</strong> {chosen.words}
            {chosen.high !== undefined && (
              <span className="faint">
                {' '}
                (± {fixed(((chosen.high - chosen.value) / chosen.value) * 100, 1)} %)
              </span>
            )}
            {chosen.isDoubtful && <span className="warn"> {say('▲ see below')}</span>}
          </>
        )}
      </p>
      <CompassFrame
        axes={axes}
        title={title}
        axis={axis}
        sections={sections}
        keys={points.map(({ key }) => key)}
        selected={selected}
        spoken={spoken}
        onSelect={onSelect}
      >
        {runsOf(points, sections).map((run) => (
          <path key={run[0]?.key} className="chart-line" d={path(run) ?? ''} />
        ))}
        <Whiskers axes={axes} points={points} />
        {points.map(({ key, kind, value, isDoubtful }) =>
          kind === 'wound' ? (
            <rect
              key={key}
              className={`chart-point wound${isDoubtful ? ' doubtful' : ''}`}
              x={x(key) - 3.5}
              y={y(value) - 3.5}
              width={7}
              height={7}
            />
          ) : (
            <circle
              key={key}
              className={`chart-point plain${isDoubtful ? ' doubtful' : ''}`}
              cx={x(key)}
              cy={y(value)}
              r={3.4}
            />
          ),
        )}
        {chosen && <circle className="chart-ring" cx={x(chosen.key)} cy={y(chosen.value)} r={9} />}
      </CompassFrame>
      <figcaption className="faint">
        {sayNodes('{woundMark} wound {plainMark} plain; whiskers show one standard uncertainty. {basis}', {
          woundMark: (
            <span className="chart-key" aria-hidden="true">
              ■
            </span>
          ),
          plainMark: (
            <span className="chart-key" aria-hidden="true">
              ○
            </span>
          ),
          basis,
        })}
      </figcaption>
    </figure>
  );
}

/** Runs of neighbouring points of one section and one kind of string. */
function runsOf(points: readonly Point[], sections: readonly Section[]): Point[][] {
  const runs: Point[][] = [];
  for (const point of points) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    const goesOn =
      before !== undefined &&
      before.key === point.key - 1 &&
      before.kind === point.kind &&
      keyRangeAt(before.key, sections) === keyRangeAt(point.key, sections);
    if (run && goesOn) run.push(point);
    else runs.push([point]);
  }
  return runs;
}
