import { inInchPounds, newtonMetres } from '@becket/core';
import type { PinTorque, PinTorqueMap } from '@becket/tasks';
import { scaleLinear } from 'd3-scale';
import { useLanguage } from '../../parts/language.tsx';
import '../../parts/chart.css';
import { useWidth } from '../../parts/use-width.ts';
import { torqueIn } from './torque-state.ts';

const height = 300;
const edge = { top: 40, right: 14, bottom: 34, left: 58 };

interface Props {
  readonly map: PinTorqueMap;
  readonly unit: 'mm' | 'in';
  readonly onChoose: (pin: PinTorque) => void;
  readonly chosen: string | undefined;
}

/** Where does the block hold, and where does it not? Grip of every pin that was read, along the compass. */
export function TorqueChart({ map, unit, onChoose, chosen }: Props) {
  const language = useLanguage();
  const { plain, say, sayNodes } = language;
  const [frame, width] = useWidth<HTMLElement>();
  const inUnit = (torque: number) => (unit === 'mm' ? torque : inInchPounds(newtonMetres(torque)));
  const shown = map.pins.filter(({ grip }) => grip !== undefined);
  const raw = map.pins.filter(({ grip }) => grip === undefined);
  const keys = map.field.sections.flatMap(({ firstKey, lastKey }) => [firstKey, lastKey]);
  const [first, last] = keys.length === 0 ? [1, 88] : [Math.min(...keys), Math.max(...keys)];
  const x = scaleLinear()
    .domain([first - 0.5, last + 0.5])
    .range([edge.left, width - edge.right]);
  const most = Math.max(
    inUnit(map.lowBelow) * 1.2,
    ...shown.map(({ grip }) => inUnit(grip!.grip + grip!.standardUncertainty)),
    ...raw.flatMap(({ byKind }) => Object.values(byKind).map((torque) => inUnit(torque))),
    ...map.pins.map(({ pull }) => (pull === undefined ? 0 : inUnit(pull.pull))),
  );
  const y = scaleLinear()
    .domain([0, most])
    .nice(5)
    .range([height - edge.bottom, edge.top]);
  const atX = ({ key, string }: PinTorque) => x(key + ((string ?? 2) - 2) * 0.28);
  const pin = shown.find(({ name }) => name === chosen);

  return (
    <figure className="chart torque-chart" ref={frame}>
      <h3>{say('Where does the block hold?')}</h3>
      <p className="chart-spoken">
        {pin === undefined ? (
          <span className="faint">{say('Tap a pin to see its figures.')}</span>
        ) : (
          sayNodes(
            '{pin} grip {grip} {uncertainty}{pull, select, none {} other {, string pulls {pull}}}{margin, select, none {} other {, margin {margin}}}{feels, select, none {} other {; felt: {feels}}}',
            {
              pin: <strong>{pin.name}</strong>,
              grip: torqueIn(pin.grip!.grip, unit, language),
              uncertainty: (
                <span className="faint">± {torqueIn(pin.grip!.standardUncertainty, unit, language)}</span>
              ),
              pull: pin.pull === undefined ? 'none' : torqueIn(pin.pull.pull, unit, language),
              margin: pin.margin === undefined ? 'none' : torqueIn(pin.margin, unit, language),
              feels: pin.feels.length === 0 ? 'none' : pin.feels.map((feel) => say(feel)).join(', '),
            },
          )
        )}
      </p>
      <svg
        width={width}
        height={height}
        role="img"
        aria-label={say('Grip of {shown} pins along the compass', { shown: shown.length })}
      >
        {map.sections.map(({ section }, index) => {
          const own = map.field.sections.find((one) => one.section === section)!;
          const from = x(own.firstKey - 0.5);
          const to = x(own.lastKey + 0.5);
          return (
            <g key={section}>
              <rect
                className={index % 2 === 0 ? 'chart-band' : 'chart-band odd'}
                x={from}
                y={edge.top}
                width={to - from}
                height={height - edge.top - edge.bottom}
              />
              <text className="chart-section" x={(from + to) / 2} y={edge.top - 8} textAnchor="middle">
                {section}
              </text>
            </g>
          );
        })}
        {y.ticks(5).map((tick) => (
          <g key={tick}>
            <line className="chart-grid" x1={edge.left} x2={width - edge.right} y1={y(tick)} y2={y(tick)} />
            <text x={edge.left - 8} y={y(tick) + 5} textAnchor="end">
              {plain(tick)}
            </text>
          </g>
        ))}
        {map.sections.map(({ section, mean }) => {
          const own = map.field.sections.find((one) => one.section === section)!;
          if (mean === undefined) return null;
          const from = x(own.firstKey - 0.5);
          const to = x(own.lastKey + 0.5);
          return (
            <g key={section}>
              {mean.interval !== undefined && (
                <rect
                  className="torque-interval"
                  x={from}
                  width={to - from}
                  y={y(inUnit(mean.interval.high))}
                  height={Math.max(
                    1,
                    y(Math.max(0, inUnit(mean.interval.low))) - y(inUnit(mean.interval.high)),
                  )}
                />
              )}
              <line
                className="torque-mean"
                x1={from}
                x2={to}
                y1={y(inUnit(mean.mean))}
                y2={y(inUnit(mean.mean))}
              />
            </g>
          );
        })}
        <line
          className="torque-low-line"
          x1={edge.left}
          x2={width - edge.right}
          y1={y(inUnit(map.lowBelow))}
          y2={y(inUnit(map.lowBelow))}
        />
        {map.pins.map((one) =>
          one.pull === undefined ? null : (
            <line
              key={one.name}
              className="torque-pull"
              x1={atX(one) - 4}
              x2={atX(one) + 4}
              y1={y(inUnit(one.pull.pull))}
              y2={y(inUnit(one.pull.pull))}
            />
          ),
        )}
        {raw.flatMap((one) =>
          Object.entries(one.byKind).map(([kind, torque]) => (
            <path
              key={`${one.name}${kind}`}
              className="torque-raw"
              d={kind === 'flat' ? 'M-6,-5 L6,-5 L0,6 Z' : 'M-6,5 L6,5 L0,-6 Z'}
              transform={`translate(${atX(one)} ${y(inUnit(torque))})`}
            />
          )),
        )}
        {shown.map((one) => {
          const grip = one.grip!;
          return (
            <g
              key={one.name}
              className={one.isLow === true ? 'torque-pin low' : 'torque-pin'}
              onPointerUp={() => onChoose(one)}
            >
              <line
                className="chart-whisker"
                x1={atX(one)}
                x2={atX(one)}
                y1={y(inUnit(Math.max(0, grip.grip - grip.standardUncertainty)))}
                y2={y(inUnit(grip.grip + grip.standardUncertainty))}
              />
              <circle cx={atX(one)} cy={y(inUnit(Math.max(0, grip.grip)))} r={one.name === chosen ? 8 : 5} />
              <rect
                className="torque-reach"
                x={atX(one) - 12}
                y={edge.top}
                width={24}
                height={height - edge.top - edge.bottom}
              />
            </g>
          );
        })}
        {Array.from({ length: 8 }, (_, octave) => 4 + 12 * octave)
          .filter((key) => key >= first && key <= last)
          .map((key, octave) => (
            <text key={key} x={x(key)} y={height - 10} textAnchor="middle">
              C{octave + 1}
            </text>
          ))}
        <text x={edge.left} y={16}>
          {unit === 'mm' ? say('grip (N·m)') : say('grip (in·lbf)')}
        </text>
      </svg>
      <figcaption className="faint">
        {say(
          'Dots: grip with one standard uncertainty. Bands: mean of the section with its 95 % interval. Dashed: {torque}, {source}. Short lines: pull of the string.',
          { torque: torqueIn(map.lowBelow, unit, language), source: map.lowBelowFrom },
        )}
        {raw.length > 0 && (
          <>
            {' '}
            {say(
              'Triangles: torque as read, ▲ going sharp with the string’s pull in it, ▼ going flat without it; no grip is known there.',
            )}
          </>
        )}
      </figcaption>
    </figure>
  );
}

/** How are the grips spread? One bar for each newton metre. */
export function TorqueBars({ map, unit }: { map: PinTorqueMap; unit: 'mm' | 'in' }) {
  const language = useLanguage();
  const { fixed, plain, say } = language;
  const [frame, width] = useWidth<HTMLElement>();
  if (map.bins.length === 0) return null;
  const bars = { top: 24, bottom: 44, left: 40, right: 14, height: 200 };
  const x = scaleLinear()
    .domain([map.bins[0]!.from, map.bins.at(-1)!.to])
    .range([bars.left, width - bars.right]);
  const most = Math.max(...map.bins.map(({ pins }) => pins.length));
  const y = scaleLinear()
    .domain([0, most])
    .range([bars.height - bars.bottom, bars.top]);
  return (
    <figure className="chart" ref={frame}>
      <h3>{say('How are the grips spread?')}</h3>
      <svg
        width={width}
        height={bars.height}
        role="img"
        aria-label={say('Pins by grip: {bars}', {
          bars: map.bins
            .map(({ from, to, pins }) =>
              say('{from} to {to}: {pins}', {
                from: torqueIn(from, unit, language),
                to: torqueIn(to, unit, language),
                pins: pins.length,
              }),
            )
            .join('; '),
        })}
      >
        {map.bins.map(({ from, to, pins }) => (
          <g key={from}>
            <rect
              className={from < map.lowBelow ? 'torque-bar low' : 'torque-bar'}
              x={x(from) + 1}
              width={Math.max(1, x(to) - x(from) - 2)}
              y={y(pins.length)}
              height={y(0) - y(pins.length)}
            />
            {pins.length > 0 && (
              <text x={(x(from) + x(to)) / 2} y={y(pins.length) - 6} textAnchor="middle">
                {pins.length}
              </text>
            )}
          </g>
        ))}
        {x.ticks(Math.max(3, Math.floor(width / 110))).map((tick) => (
          <text key={tick} x={x(tick)} y={bars.height - 22} textAnchor="middle">
            {unit === 'mm' ? plain(tick) : fixed(inInchPounds(newtonMetres(tick)), 0)}
          </text>
        ))}
        <text x={width - bars.right} y={bars.height - 4} textAnchor="end">
          {unit === 'mm' ? say('grip (N·m)') : say('grip (in·lbf)')}
        </text>
      </svg>
    </figure>
  );
}
