import { noteName } from '@becket/core';
import type { Section } from '@becket/journal';
import { type ScaleLinear, type ScaleLogarithmic, scaleLinear, scaleLog } from 'd3-scale';
import { type PointerEvent, type ReactNode, useMemo } from 'react';
import { useLanguage } from '../parts/language.tsx';
import { tickText } from '../parts/tick-text.ts';

const height = 320;
const edge = { top: 58, right: 14, bottom: 34, left: 62 };

interface Valued {
  readonly value: number;
  readonly low: number | undefined;
  readonly high: number | undefined;
}

export interface CompassAxes {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number> | ScaleLogarithmic<number, number>;
  readonly scale: 'linear' | 'log';
  readonly width: number;
  readonly firstKey: number;
  readonly lastKey: number;
}

interface Wanted extends Omit<CompassAxes, 'x' | 'y'> {
  /** Everything that is drawn; the list itself decides when the axis is made anew. */
  readonly points: readonly Valued[];
  /** Where a linear axis begins. */
  readonly from: 'zero' | 'least';
}

/** Keys from left to right, figures upwards, whiskers and all. */
export function useCompassAxes({ points, from, scale, width, firstKey, lastKey }: Wanted): CompassAxes {
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
    const range = [height - edge.bottom, edge.top];
    return scale === 'log'
      ? scaleLog()
          .domain([least / 1.3, most * 1.3])
          .range(range)
      : scaleLinear()
          .domain([from === 'zero' ? 0 : least, most])
          .nice(5)
          .range(range);
  }, [points, scale, from]);
  return { x, y, scale, width, firstKey, lastKey };
}

interface FrameProps {
  readonly axes: CompassAxes;
  /** What the chart shows, with its unit. */
  readonly title: string;
  readonly axis: string;
  readonly sections: readonly Section[];
  /** Keys that have a figure, in order: what a tap or an arrow goes to. */
  readonly keys: readonly number[];
  readonly selected: number | undefined;
  /** What is said of the note that is chosen. */
  readonly spoken: string;
  readonly onSelect: (key: number) => void;
  /** The figures themselves. */
  readonly children: ReactNode;
}

const steps: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 12,
  PageDown: -12,
  Home: -99,
  End: 99,
};

/** Sections, axes and the note that is chosen, by tap or by key, round the figures of a chart over the compass. */
export function CompassFrame(props: FrameProps) {
  const { axes, title, axis, sections, keys, selected, spoken, onSelect, children } = props;
  const { x, y, scale, width, firstKey, lastKey } = axes;
  const language = useLanguage();
  const { say } = language;
  const foot = height - edge.bottom;
  const ticks = scale === 'log' ? y.ticks().filter((tick) => /^1/.test(tick.toExponential())) : y.ticks(5);
  const octaves = [];
  for (let key = 4; key <= lastKey; key += 12) if (key >= firstKey) octaves.push(key);

  function choose(event: PointerEvent<HTMLDivElement>): void {
    const at = x.invert(event.clientX - event.currentTarget.getBoundingClientRect().left);
    const nearest = keys.reduce<number | undefined>(
      (best, key) => (best === undefined || Math.abs(key - at) < Math.abs(best - at) ? key : best),
      undefined,
    );
    if (nearest !== undefined) onSelect(nearest);
  }
  function step(by: number): void {
    const index = selected === undefined ? -1 : keys.indexOf(selected);
    const next = keys[Math.min(keys.length - 1, Math.max(0, index === -1 ? 0 : index + by))];
    if (next !== undefined) onSelect(next);
  }
  return (
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
        choose(event);
      }}
      onPointerMove={(event) => {
        if (event.buttons !== 0) choose(event);
      }}
      onKeyDown={(event) => {
        const by = steps[event.key];
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
              height={foot - edge.top + 22}
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
                y2={foot}
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
            <line className="chart-mark" x1={x(key)} x2={x(key)} y1={foot} y2={foot + 6} />
            {(width >= 520 || index % 2 === 0) && (
              <text className="chart-tick" x={x(key)} y={foot + 22} textAnchor="middle">
                {noteName(key)}
              </text>
            )}
          </g>
        ))}
        <line className="chart-axis" x1={edge.left} x2={width - edge.right} y1={foot} y2={foot} />
        <text className="chart-axis-words" x={8} y={20}>
          {axis}
        </text>
        <text className="chart-axis-words" x={edge.left - 8} y={foot + 22} textAnchor="end">
          {say('note')}
        </text>
        {selected !== undefined && keys.includes(selected) && (
          <line className="chart-chosen" x1={x(selected)} x2={x(selected)} y1={edge.top} y2={foot} />
        )}
        {children}
      </svg>
    </div>
  );
}

/** Whiskers of the points that have them, cut off where the axis ends. */
export function Whiskers({
  axes: { x, y },
  points,
}: {
  axes: CompassAxes;
  points: readonly (Valued & { readonly key: number })[];
}) {
  const [least, most] = y.domain() as [number, number];
  return points.map(({ key, low, high }) =>
    low === undefined || high === undefined ? null : (
      <line
        key={key}
        className="chart-whisker"
        x1={x(key)}
        x2={x(key)}
        y1={y(Math.max(low, least))}
        y2={y(Math.min(high, most))}
      />
    ),
  );
}

/** As much of a section's name as there is room for over it. */
function fitting(words: string, room: number): string {
  const letters = Math.floor((room - 8) / 8);
  return words.length <= letters ? words : letters < 3 ? '' : `${words.slice(0, letters - 1)}…`;
}

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
function powerOfTen(value: number): string {
  const power = Math.round(Math.log10(value));
  const digits = [...String(Math.abs(power))].map((digit) => superscripts[Number(digit)]).join('');
  return `10${power < 0 ? '⁻' : ''}${digits}`;
}
