import { keyRangeAt } from '@becket/core';
import type { Section } from '@becket/journal';
import { scaleLinear, scaleLog } from 'd3-scale';
import { line } from 'd3-shape';
import { useLanguage } from '../parts/language.tsx';
import '../parts/chart.css';
import { type PointerEvent, useMemo } from 'react';
import { tickText } from '../parts/tick-text.ts';
import { useWidth } from '../parts/use-width.ts';

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

const height = 320;
const edge = { top: 58, right: 14, bottom: 34, left: 62 };

/** Figures of the strings against the key, with sections and breaks. Drawn at its own size, so that words stay readable. */
export function CompassChart(props: Props) {
  const language = useLanguage();
  const { fixed, say, sayNodes } = language;
  const { title, axis, scale, basis, points, firstKey, lastKey, sections, selected, onSelect } = props;
  const [frame, width] = useWidth<HTMLElement>();

  const x = useMemo(
    () =>
      scaleLinear()
        .domain([firstKey - 0.5, lastKey + 0.5])
        .range([edge.left, width - edge.right]),
    [firstKey, lastKey, width],
  );
  const y = useMemo(() => {
    const values = points
      .flatMap(({ value, low, high }) => [value, low ?? value, high ?? value])
      .filter((one) => one > 0);
    const [least, most] = values.length === 0 ? [0.5, 1] : [Math.min(...values), Math.max(...values)];
    return scale === 'log'
      ? scaleLog()
          .domain([least / 1.3, most * 1.3])
          .range([height - edge.bottom, edge.top])
      : scaleLinear()
          .domain([0, most])
          .nice(5)
          .range([height - edge.bottom, edge.top]);
  }, [points, scale]);

  const ticks = scale === 'log' ? y.ticks().filter((tick) => /^[1]/.test(tick.toExponential())) : y.ticks(5);
  const octaves = [];
  for (let key = 4; key <= lastKey; key += 12) if (key >= firstKey) octaves.push(key);
  const everyOther = width < 520;
  // A line joins neighbours of one section and one kind: nothing is drawn across a break or a note that is missing.
  const path = line<Point>()
    .x(({ key }) => x(key))
    .y(({ value }) => y(value));
  const chosen = points.find(({ key }) => key === selected);

  function keyAt(event: PointerEvent<HTMLDivElement>): number | undefined {
    const { left } = event.currentTarget.getBoundingClientRect();
    const at = x.invert(event.clientX - left);
    let best: Point | undefined;
    for (const point of points)
      if (best === undefined || Math.abs(point.key - at) < Math.abs(best.key - at)) best = point;
    return best?.key;
  }

  function step(by: number): void {
    const index = points.findIndex(({ key }) => key === selected);
    const next = points[Math.min(points.length - 1, Math.max(0, index === -1 ? 0 : index + by))];
    if (next) onSelect(next.key);
  }

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
      <div
        className="chart-frame"
        role="slider"
        tabIndex={0}
        aria-label={say('{title} {axis}. Note', { title, axis })}
        aria-valuemin={firstKey}
        aria-valuemax={lastKey}
        aria-valuenow={selected ?? firstKey}
        aria-valuetext={spoken}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          const key = keyAt(event);
          if (key !== undefined) onSelect(key);
        }}
        onPointerMove={(event) => {
          if (event.buttons === 0) return;
          const key = keyAt(event);
          if (key !== undefined) onSelect(key);
        }}
        onKeyDown={(event) => {
          const by = {
            ArrowRight: 1,
            ArrowUp: 1,
            ArrowLeft: -1,
            ArrowDown: -1,
            PageUp: 12,
            PageDown: -12,
            Home: -99,
            End: 99,
          }[event.key];
          if (by === undefined) return;
          event.preventDefault();
          step(by);
        }}
      >
        <svg width={width} height={height} aria-hidden="true">
          {sections.map(({ section, firstKey: first, lastKey: last }, index) => (
            <g key={section}>
              <rect
                className={index % 2 === 0 ? 'chart-band' : 'chart-band odd'}
                x={x(first - 0.5)}
                y={edge.top - 22}
                width={x(last + 0.5) - x(first - 0.5)}
                height={height - edge.bottom - edge.top + 22}
              />
              <text className="chart-section" x={x(first - 0.5) + 5} y={edge.top - 7}>
                {fitting(section, x(last + 0.5) - x(first - 0.5))}
              </text>
              {index > 0 && (
                <line
                  className="chart-break"
                  x1={x(first - 0.5)}
                  x2={x(first - 0.5)}
                  y1={edge.top - 22}
                  y2={height - edge.bottom}
                />
              )}
            </g>
          ))}
          {ticks.map((tick) => (
            <g key={tick}>
              <line className="chart-grid" x1={edge.left} x2={width - edge.right} y1={y(tick)} y2={y(tick)} />
              <text className="chart-tick" x={edge.left - 8} y={y(tick) + 5} textAnchor="end">
                {scale === 'log' ? powerOfTen(tick) : tickText(y.tickFormat(5)(tick), language)}
              </text>
            </g>
          ))}
          {octaves.map((key, index) => (
            <g key={key}>
              <line
                className="chart-mark"
                x1={x(key)}
                x2={x(key)}
                y1={height - edge.bottom}
                y2={height - edge.bottom + 6}
              />
              {(!everyOther || index % 2 === 0) && (
                <text className="chart-tick" x={x(key)} y={height - edge.bottom + 22} textAnchor="middle">
                  C{index + (firstKey <= 4 ? 1 : Math.ceil((firstKey - 4) / 12) + 1)}
                </text>
              )}
            </g>
          ))}
          <line
            className="chart-axis"
            x1={edge.left}
            x2={width - edge.right}
            y1={height - edge.bottom}
            y2={height - edge.bottom}
          />
          <text className="chart-axis-words" x={8} y={20}>
            {axis}
          </text>
          <text className="chart-axis-words" x={edge.left - 8} y={height - edge.bottom + 22} textAnchor="end">
            {say('note')}
          </text>
          {runsOf(points, sections).map((run) => (
            <path key={run[0]?.key} className="chart-line" d={path(run) ?? ''} />
          ))}
          {points.map(({ key, low, high }) =>
            low === undefined || high === undefined ? null : (
              <line
                key={key}
                className="chart-whisker"
                x1={x(key)}
                x2={x(key)}
                y1={y(Math.max(low, y.domain()[0]!))}
                y2={y(high)}
              />
            ),
          )}
          {chosen && (
            <line
              className="chart-chosen"
              x1={x(chosen.key)}
              x2={x(chosen.key)}
              y1={edge.top}
              y2={height - edge.bottom}
            />
          )}
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
        </svg>
      </div>
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

function fitting(words: string, room: number): string {
  const letters = Math.floor((room - 8) / 8);
  return words.length <= letters ? words : letters < 3 ? '' : `${words.slice(0, letters - 1)}…`;
}

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
function powerOfTen(value: number): string {
  const power = Math.round(Math.log10(value));
  return `10${power < 0 ? '⁻' : ''}${[...String(Math.abs(power))].map((digit) => superscripts[Number(digit)]).join('')}`;
}
