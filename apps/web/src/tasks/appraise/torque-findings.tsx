import type { PinTorque, PinTorqueMap } from '@becket/tasks';
import { TableFrame } from '../../parts/table-frame.tsx';
import { TorqueBars, TorqueChart } from './torque-chart.tsx';
import { torqueIn } from './torque-state.ts';

interface Props {
  readonly map: PinTorqueMap;
  readonly unit: 'mm' | 'in';
  readonly chosen: string | undefined;
  readonly onChoose: (pin: PinTorque) => void;
  readonly onRead: (place: { key: number; string: number }) => void;
}

/** What the readings say of the block, and what they cannot say. */
export function TorqueFindings({ map, unit, chosen, onChoose, onRead }: Props) {
  if (map.pins.length === 0)
    return (
      <p>
        Nothing was read yet. Read every section, and both ends of each; every fourth note is a fair first
        round.
      </p>
    );
  const { zone, pattern, season, questions } = map;
  const without = map.pins.filter(({ grip }) => grip === undefined);
  const text = (value: number) => torqueIn(value, unit);
  return (
    <>
      {questions.map(({ entries, sentence }) => (
        <p key={`${entries[0]}${sentence}`} className="question">
          ? {sentence}
        </p>
      ))}
      <TorqueChart map={map} unit={unit} chosen={chosen} onChoose={onChoose} />
      <section className="torque-said" aria-labelledby="pattern">
        <h3 id="pattern">What it looks like: {pattern.kind}</h3>
        <p>{pattern.looksLike}</p>
        <p className="faint">
          {pattern.oftenMeans} <em>Common practice, no source.</em> {pattern.howSure}
        </p>
        {season.cautions.map((sentence) => (
          <p key={sentence} className="notice">
            {sentence}
          </p>
        ))}
        {season.lowest_percent !== undefined && season.highest_percent !== undefined && (
          <p className="faint">
            Read at {season.lowest_percent.toFixed(0)}
            {season.highest_percent - season.lowest_percent >= 1 &&
              ` to ${season.highest_percent.toFixed(0)}`}{' '}
            % relative humidity
            {season.withoutHumidity > 0 && `; ${season.withoutHumidity} readings without`}.
          </p>
        )}
        {season.lowest_percent === undefined && (
          <p className="question">
            ? No humidity was read that day: grip moves with the season. Take it under Pitch and air.
          </p>
        )}
      </section>
      {zone !== undefined && (
        <section className="torque-said" aria-labelledby="zone">
          <h3 id="zone">What may still hide</h3>
          <p>
            A bad zone of {zone.size} pins in a row would have been missed with a chance of{' '}
            <strong>{(zone.chanceMissed * 100).toFixed(0)} %</strong>, wherever it lies.
            {zone.next !== undefined &&
              ` ${zone.next.note} string ${zone.next.string} next lowers it most, to ${(zone.chanceAfterNext * 100).toFixed(0)} %.`}
          </p>
          {zone.next !== undefined && (
            <button
              type="button"
              className="button"
              onClick={() => onRead({ key: zone.next!.key, string: zone.next!.string })}
            >
              Read {zone.next.note} string {zone.next.string} next
            </button>
          )}
        </section>
      )}
      <TableFrame label="Torque by section">
        <table className="table">
          <caption>By section</caption>
          <thead>
            <tr>
              <th scope="col">Section</th>
              <th scope="col" className="number">
                Read
              </th>
              <th scope="col" className="number">
                Mean grip
              </th>
              <th scope="col" className="number">
                95 % interval
              </th>
              <th scope="col" className="number">
                Lowest
              </th>
              <th scope="col" className="number">
                Low
              </th>
              <th scope="col" className="number">
                Zone missed
              </th>
            </tr>
          </thead>
          <tbody>
            {map.sections.map(({ section, pins, withGrip, mean, low, lowest, zone: own }) => (
              <tr key={section}>
                <th scope="row">{section}</th>
                <td className="number">
                  {withGrip} of {pins}
                </td>
                <td className="number">{mean === undefined ? 'not read' : text(mean.mean)}</td>
                <td className="number">
                  {mean?.interval === undefined
                    ? 'too few'
                    : `${text(mean.interval.low)} to ${text(mean.interval.high)}`}
                </td>
                <td className="number">
                  {lowest?.grip === undefined ? '' : `${text(lowest.grip.grip)} (${lowest.name})`}
                </td>
                <td className="number">{low}</td>
                <td className="number">
                  {own === undefined ? '' : `${(own.chanceMissed * 100).toFixed(0)} %`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <TorqueBars map={map} unit={unit} />
      {without.length > 0 && (
        <details>
          <summary>
            {without.length} {without.length === 1 ? 'pin has' : 'pins have'} a reading but no grip
          </summary>
          <ul>
            {without.map(({ name, whyNoGrip }) => (
              <li key={name}>
                {name}: {whyNoGrip}
              </li>
            ))}
          </ul>
        </details>
      )}
      <details>
        <summary>Pin by pin</summary>
        <TableFrame label="Torque by pin">
          <table className="table">
            <caption>
              Pin by pin: grip − pull = margin; a pin holds its string while the ratio is above 1
            </caption>
            <thead>
              <tr>
                <th scope="col">Pin</th>
                <th scope="col" className="number">
                  Grip
                </th>
                <th scope="col" className="number">
                  String’s pull
                </th>
                <th scope="col" className="number">
                  Margin
                </th>
                <th scope="col" className="number">
                  Ratio
                </th>
                <th scope="col">From</th>
                <th scope="col">Feel</th>
              </tr>
            </thead>
            <tbody>
              {map.pins
                .filter(({ grip }) => grip !== undefined)
                .map((pin) => (
                  <tr key={pin.name} className={pin.isLow === true ? 'is-low' : undefined}>
                    <th scope="row" className="one-line">
                      {pin.name}
                    </th>
                    <td className="number">
                      {text(pin.grip!.grip)} ± {text(pin.grip!.standardUncertainty)}
                      {pin.isLow === true && <span className="warn"> low</span>}
                    </td>
                    <td className="number">{pin.pull === undefined ? 'not known' : text(pin.pull.pull)}</td>
                    <td className="number">{pin.margin === undefined ? '' : text(pin.margin)}</td>
                    <td className="number">{pin.holdingRatio?.toFixed(1) ?? ''}</td>
                    <td>{pin.grip!.from}</td>
                    <td>{pin.feels.join(', ')}</td>
                  </tr>
                ))}
            </tbody>
          </table>
        </TableFrame>
      </details>
    </>
  );
}
