import { noteName } from '@becket/core';
import type { Section } from '@becket/journal';
import { scaleLinear, scaleLog } from 'd3-scale';
import { type KeyboardEvent, type PointerEvent, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { tickText } from '../../parts/tick-text.ts';
import type { ComparisonChartData } from './compare-state.ts';

interface Props extends ComparisonChartData {
  readonly firstKey: number;
  readonly lastKey: number;
  readonly sections: readonly Section[];
  readonly selected: number | undefined;
  readonly onSelect: (key: number) => void;
}

const height = 300;
const edge = { top: 48, right: 14, bottom: 32, left: 62 };
/** A hollow ring, a filled diamond, an upright cross: told apart without colour too. */
const marks = ['before', 'after', 'beside'] as const;
const signs = ['○', '◆', '+'] as const;

/** Figures of two or three scales on one pair of axes. */
export function ComparisonChart(props: Props) {
  const language = useLanguage();
  const { say } = language;
  const { question, axis, scale, basis, series, firstKey, lastKey, sections, selected, onSelect } = props;
  const frame = useRef<HTMLElement>(null);
  const width = useWidth(frame);
  const x = scaleLinear()
    .domain([firstKey - 0.5, lastKey + 0.5])
    .range([edge.left, width - edge.right]);
  const y = useMemo(() => {
    const values = series
      .flatMap(({ points }) => points.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]))
      .filter((one) => one > 0);
    const [least, most] = values.length === 0 ? [0.5, 1] : [Math.min(...values), Math.max(...values)];
    const range = [height - edge.bottom, edge.top];
    return scale === 'log'
      ? scaleLog()
          .domain([least / 1.3, most * 1.3])
          .range(range)
      : scaleLinear().domain([least, most]).nice(5).range(range);
  }, [series, scale]);
  const ticks = scale === 'log' ? y.ticks().filter((tick) => /^1/.test(tick.toExponential())) : y.ticks(5);

  const keys = series[0]?.points.map(({ key }) => key) ?? [];
  const spoken =
    selected === undefined
      ? say('no note chosen')
      : `${noteName(selected)}: ${series.map(({ name, points }) => `${name} ${points.find(({ key }) => key === selected)?.words ?? say('not computed')}`).join('; ')}`;

  function select(event: PointerEvent<HTMLDivElement>): void {
    const at = x.invert(event.clientX - event.currentTarget.getBoundingClientRect().left);
    const nearest = keys.reduce<number | undefined>(
      (best, key) => (best === undefined || Math.abs(key - at) < Math.abs(best - at) ? key : best),
      undefined,
    );
    if (nearest !== undefined) onSelect(nearest);
  }

  function step(event: KeyboardEvent): void {
    const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 12, PageDown: -12 }[
      event.key
    ];
    if (by === undefined) return;
    event.preventDefault();
    const index = keys.indexOf(selected ?? -1);
    const next = keys[Math.min(keys.length - 1, Math.max(0, index === -1 ? 0 : index + by))];
    if (next !== undefined) onSelect(next);
  }

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
      <div
        className="chart-frame"
        role="slider"
        tabIndex={0}
        aria-label={say('{title} {axis}. Note', { title: question, axis })}
        aria-valuemin={firstKey}
        aria-valuemax={lastKey}
        aria-valuenow={selected ?? firstKey}
        aria-valuetext={spoken}
        onPointerDown={select}
        onPointerMove={(event) => {
          if (event.buttons !== 0) select(event);
        }}
        onKeyDown={step}
      >
        <svg width={width} height={height} aria-hidden="true">
          {sections.map(({ section, firstKey: first, lastKey: last }, index) => (
            <g key={section}>
              <rect
                className={index % 2 === 0 ? 'chart-band' : 'chart-band odd'}
                x={x(first - 0.5)}
                y={edge.top}
                width={x(last + 0.5) - x(first - 0.5)}
                height={height - edge.bottom - edge.top}
              />
              <text className="chart-section" x={x(first - 0.5) + 4} y={edge.top - 6}>
                {fitting(section, x(last + 0.5) - x(first - 0.5))}
              </text>
            </g>
          ))}
          {ticks.map((tick) => (
            <g key={tick}>
              <line className="chart-grid" x1={edge.left} x2={width - edge.right} y1={y(tick)} y2={y(tick)} />
              <text x={edge.left - 8} y={y(tick) + 5} textAnchor="end">
                {scale === 'log' ? powerOfTen(tick) : tickText(y.tickFormat(5)(tick), language)}
              </text>
            </g>
          ))}
          {keys
            .filter((key) => (key - 4) % 12 === 0)
            .filter((_, index) => width >= 520 || index % 2 === 0)
            .map((key) => (
              <text key={key} x={x(key)} y={height - edge.bottom + 22} textAnchor="middle">
                {noteName(key)}
              </text>
            ))}
          <text x={8} y={20}>
            {axis}
          </text>
          {selected !== undefined && (
            <line
              className="chart-chosen"
              x1={x(selected)}
              x2={x(selected)}
              y1={edge.top}
              y2={height - edge.bottom}
            />
          )}
          {series.map(({ points }, which) => (
            <g key={marks[which]} className={`chart-series ${marks[which]}`}>
              {points.map(({ key, low, high }) =>
                low === undefined || high === undefined ? null : (
                  <line
                    key={key}
                    x1={x(key)}
                    x2={x(key)}
                    y1={y(Math.max(low, y.domain()[0]!))}
                    y2={y(Math.min(high, y.domain()[1]!))}
                  />
                ),
              )}
              {points.map(({ key, value }) =>
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
        </svg>
      </div>
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

function useWidth(frame: React.RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(760);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const measure = () => setWidth(Math.max(300, Math.round(element.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [frame]);
  return width;
}
