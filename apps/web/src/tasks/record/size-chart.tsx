import type { InferredWireSizes } from '@becket/tasks';
import { scaleLinear } from 'd3-scale';
import { type PointerEvent, useMemo } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, lengthNumber, lengthText } from '../../parts/length-text.ts';
import { useWidth } from '../../parts/use-width.ts';
import { oddsText, sizeRuns } from './sizes-state.ts';
import { bothUnits } from './typed-length.ts';

interface Props {
  readonly sizes: InferredWireSizes;
  readonly unit: LengthUnit;
  readonly selected: number | undefined;
  readonly onSelect: (key: number) => void;
}

const height = 340;
const edge = { top: 16, right: 46, bottom: 52, left: 70 };

/** Wire readings against the note, with the inferred sizes drawn through them as steps. */
export function SizeChart({ sizes, unit, selected, onSelect }: Props) {
  const language = useLanguage();
  const { say } = language;
  const [frame, width] = useWidth<HTMLElement>();

  const { notes } = sizes;
  const firstKey = notes[0]?.key ?? 1;
  const lastKey = notes.at(-1)?.key ?? 88;
  const x = useMemo(
    () =>
      scaleLinear()
        .domain([firstKey - 0.5, lastKey + 0.5])
        .range([edge.left, width - edge.right]),
    [firstKey, lastKey, width],
  );
  const y = useMemo(() => {
    const values = notes.flatMap(({ diameter, readings }) => [
      diameter,
      ...readings.map(({ value_si }) => value_si),
    ]);
    return scaleLinear()
      .domain([Math.min(...values) - 2e-5, Math.max(...values) + 2e-5])
      .range([height - edge.bottom, edge.top]);
  }, [notes]);
  const runs = useMemo(() => sizeRuns(notes), [notes]);
  const steps = runs
    .map(({ first, last, diameter_m }, index) => {
      const joins = index > 0 && runs[index - 1]?.last.key === first.key - 1;
      return `${joins ? 'L' : 'M'}${x(first.key - 0.5)},${y(diameter_m)}L${x(last.key + 0.5)},${y(diameter_m)}`;
    })
    .join('');
  const chosen = notes.find(({ key }) => key === selected);
  const octaves = notes.filter(({ note }) => /^C\d/.test(note));
  const words =
    chosen === undefined
      ? undefined
      : say('size {size}, {diameter}, {odds}; {readings, plural, =0 {no reading} other {read {values}}}', {
          size: chosen.size,
          diameter: bothUnits(chosen.diameter, unit, 'diameter', language),
          odds: oddsText(chosen.odds, language),
          readings: chosen.readings.length,
          values: chosen.readings
            .map(({ value_si }) => lengthText(value_si, unit, 'diameter', language))
            .join(', '),
        });

  function choose(event: PointerEvent<HTMLDivElement>): void {
    const { left } = event.currentTarget.getBoundingClientRect();
    const at = x.invert(event.clientX - left);
    const nearest = notes.reduce((a, b) => (Math.abs(b.key - at) < Math.abs(a.key - at) ? b : a));
    onSelect(nearest.key);
  }

  function step(by: number): void {
    const index = notes.findIndex(({ key }) => key === selected);
    const next = notes[Math.min(notes.length - 1, Math.max(0, index === -1 ? 0 : index + by))];
    if (next) onSelect(next.key);
  }

  return (
    <figure className="size-chart" ref={frame}>
      <p className="size-chart-spoken">
        {chosen === undefined ? (
          <span className="faint">{say('Tap the chart to see a note.')}</span>
        ) : (
          <>
            <strong>{chosen.note}</strong> {words}
            {chosen.isDoubtful && <span className="warn"> {`◇ ${say('doubtful')}`}</span>}
          </>
        )}
      </p>
      <div
        className="size-chart-frame"
        role="slider"
        tabIndex={0}
        aria-label={say('Wire readings and inferred sizes. Note')}
        aria-valuemin={firstKey}
        aria-valuemax={lastKey}
        aria-valuenow={selected ?? firstKey}
        aria-valuetext={chosen === undefined ? say('no note chosen') : `${chosen.note}: ${words}`}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          choose(event);
        }}
        onPointerMove={(event) => {
          if (event.buttons !== 0) choose(event);
        }}
        onKeyDown={(event) => {
          const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, Home: -99, End: 99 }[
            event.key
          ];
          if (by === undefined) return;
          event.preventDefault();
          step(by);
        }}
      >
        <svg width={width} height={height} aria-hidden="true">
          {y.ticks(6).map((tick) => (
            <g key={tick}>
              <line className="size-grid" x1={edge.left} x2={width - edge.right} y1={y(tick)} y2={y(tick)} />
              <text className="size-tick" x={edge.left - 8} y={y(tick) + 5} textAnchor="end">
                {lengthNumber(tick, unit, 'diameter', language)}
              </text>
            </g>
          ))}
          {runs.map(({ size, diameter_m, last, notes: count }, index) =>
            // A size is named at the right edge once, where there is room for its name.
            runs.findIndex((run) => run.diameter_m === diameter_m) === index &&
            (count > 1 || runs.length < 14) ? (
              <text key={last.key} className="size-tick" x={width - edge.right + 8} y={y(diameter_m) + 5}>
                {size}
              </text>
            ) : null,
          )}
          {octaves.map(({ key, note }, index) => (
            <g key={key}>
              <line
                className="size-axis"
                x1={x(key)}
                x2={x(key)}
                y1={height - edge.bottom}
                y2={height - edge.bottom + 6}
              />
              {(width >= 520 || index % 2 === 0) && (
                <text className="size-tick" x={x(key)} y={height - edge.bottom + 22} textAnchor="middle">
                  {note}
                </text>
              )}
            </g>
          ))}
          <line
            className="size-axis"
            x1={edge.left}
            x2={width - edge.right}
            y1={height - edge.bottom}
            y2={height - edge.bottom}
          />
          <text className="size-words" x={4} y={height - 6}>
            {say('diameter, {unit}, against the note; right: size', { unit })}
          </text>
          <path className="size-steps" d={steps} />
          {chosen !== undefined && (
            <line
              className="size-chosen"
              x1={x(chosen.key)}
              x2={x(chosen.key)}
              y1={edge.top}
              y2={height - edge.bottom}
            />
          )}
          {notes.flatMap(({ key, readings }) =>
            readings.map(({ entry, value_si }) => (
              <circle key={entry} className="size-reading" cx={x(key)} cy={y(value_si)} r={3.2} />
            )),
          )}
          {notes
            .filter(({ isDoubtful }) => isDoubtful)
            .map(({ key, diameter }) => (
              <path key={key} className="size-doubtful" d={`M${x(key)},${y(diameter) - 9}l7,9l-7,9l-7,-9z`} />
            ))}
        </svg>
      </div>
      <figcaption className="faint">
        {say('○ a reading; ━ the size that is most probable; ◇ a doubtful note.')}
      </figcaption>
    </figure>
  );
}
