import { offsetOf, type Settling } from '@becket/journal';
import { scaleLinear } from 'd3-scale';
import '../../parts/chart.css';
import { useLanguage } from '../../parts/language.tsx';
import { useWidth } from '../../parts/use-width.ts';

const height = 320;
const edge = { top: 34, right: 20, bottom: 40, left: 58 };
/** Sections are told apart by mark and by dash, so that colour is not needed. */
const dashes = ['', '9 5', '2 5', '12 4 2 4'];

/** Where did each section stand before and after each pass? */
export function SettlingChart({ settling: { passes } }: { settling: Settling }) {
  const { say, plain } = useLanguage();
  const [frame, width] = useWidth<HTMLElement>();
  const names = [...new Set(passes.flatMap(({ sections }) => sections.map(({ section }) => section)))];
  const lines = names
    .map((name, index) => ({
      name,
      index,
      points: passes.flatMap(({ sections }, turn) => {
        const own = sections.find(({ section }) => section === name);
        return ([own?.before, own?.after] as const).flatMap((values, half) => {
          const mean = offsetOf(values);
          return mean === undefined ? [] : [{ at: 2 * turn + half, offset: mean.offset as number }];
        });
      }),
    }))
    .filter(({ points }) => points.length > 0);
  if (lines.length === 0) return null;
  const offsets = [0, ...lines.flatMap(({ points }) => points.map(({ offset }) => offset))];
  const [low, high] = [Math.min(...offsets), Math.max(...offsets)];
  const y = scaleLinear()
    .domain(low === high ? [low - 1, high + 1] : [low, high])
    .nice(5)
    .range([height - edge.bottom, edge.top]);
  const x = scaleLinear()
    .domain([-0.4, 2 * passes.length - 0.6])
    .range([edge.left, width - edge.right]);
  const bottom = height - edge.bottom;
  return (
    <figure className="chart" ref={frame}>
      <svg
        width={width}
        height={height}
        role="img"
        aria-label={say(
          'Offset from pitch of each section before and after each pass; the figures stand in the table below.',
        )}
      >
        {y.ticks(5).map((tick) => (
          <g key={tick}>
            <line
              className={tick === 0 ? 'chart-axis' : 'chart-grid'}
              x1={edge.left}
              x2={width - edge.right}
              y1={y(tick)}
              y2={y(tick)}
            />
            <text className="chart-tick" x={edge.left - 8} y={y(tick) + 5} textAnchor="end">
              {plain(tick).replace('-', '−')}
            </text>
          </g>
        ))}
        {passes.map(({ pass, entry }, turn) => (
          <g key={entry}>
            <line className="chart-mark" x1={x(2 * turn)} x2={x(2 * turn)} y1={bottom} y2={bottom + 6} />
            <line
              className="chart-mark"
              x1={x(2 * turn + 1)}
              x2={x(2 * turn + 1)}
              y1={bottom}
              y2={bottom + 6}
            />
            <text className="chart-tick" x={x(2 * turn + 0.5)} y={bottom + 24} textAnchor="middle">
              {passes.length > 5 ? String(pass) : say('pass {pass}', { pass })}
            </text>
          </g>
        ))}
        <line className="chart-axis" x1={edge.left} x2={width - edge.right} y1={bottom} y2={bottom} />
        <text className="chart-axis-words" x={8} y={20}>
          {say('cents from pitch')}
        </text>
        {lines.map(({ name, index, points }) => (
          <g key={name} className={`settle-line settle-line-${index % 4}`}>
            <polyline
              fill="none"
              strokeWidth={2}
              strokeDasharray={dashes[index % dashes.length]}
              points={points.map(({ at, offset }) => `${x(at)},${y(offset)}`).join(' ')}
            />
            {points.map(({ at, offset }) => (
              <Mark key={at} kind={index % 4} x={x(at)} y={y(offset)} />
            ))}
          </g>
        ))}
      </svg>
      <figcaption className="settle-key">
        {lines.map(({ name, index }) => (
          <span key={name}>
            <svg width={44} height={18} aria-hidden="true" className={`settle-line settle-line-${index % 4}`}>
              <line
                x1={2}
                x2={42}
                y1={9}
                y2={9}
                strokeWidth={2}
                strokeDasharray={dashes[index % dashes.length]}
              />
              <Mark kind={index % 4} x={22} y={9} />
            </svg>
            {name}
          </span>
        ))}
      </figcaption>
    </figure>
  );
}

function Mark({ kind, x, y }: { kind: number; x: number; y: number }) {
  switch (kind) {
    case 0:
      return <circle className="settle-mark full" cx={x} cy={y} r={4.5} />;
    case 1:
      return <circle className="settle-mark" cx={x} cy={y} r={4.5} />;
    case 2:
      return <rect className="settle-mark" x={x - 4.5} y={y - 4.5} width={9} height={9} />;
    default:
      return (
        <path
          className="settle-mark"
          d={`M${x - 5} ${y - 5}L${x + 5} ${y + 5}M${x - 5} ${y + 5}L${x + 5} ${y - 5}`}
        />
      );
  }
}
