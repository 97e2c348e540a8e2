import type { PinTorque, PinTorqueMap } from '@becket/tasks';
import { useLanguage } from '../../parts/language.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
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
  const language = useLanguage();
  const { fixed, say, sayNodes } = language;
  if (map.pins.length === 0)
    return (
      <p>
        {say(
          'Nothing was read yet. Read every section, and both ends of each; every fourth note is a fair first round.',
        )}
      </p>
    );
  const { zone, pattern, season, questions } = map;
  const without = map.pins.filter(({ grip }) => grip === undefined);
  const text = (value: number) => torqueIn(value, unit, language);
  return (
    <>
      {questions.map(({ entries, sentence }) => (
        <p key={`${entries[0]}${sentence}`} className="question">
          ? {sentence}
        </p>
      ))}
      <TorqueChart map={map} unit={unit} chosen={chosen} onChoose={onChoose} />
      <section className="torque-said" aria-labelledby="pattern">
        <h3 id="pattern">{say('What it looks like: {kind}', { kind: say(pattern.kind) })}</h3>
        <p>{pattern.looksLike}</p>
        <p className="faint">
          {pattern.oftenMeans} <em>{say('Common practice, no source.')}</em> {pattern.howSure}
        </p>
        {season.cautions.map((sentence) => (
          <p key={sentence} className="notice">
            {sentence}
          </p>
        ))}
        {season.lowest_percent !== undefined && season.highest_percent !== undefined && (
          <p className="faint">
            {say(
              'Read at {low}{high, select, none {} other { to {high}}} % relative humidity{without, plural, =0 {} other {; # readings without}}.',
              {
                low: fixed(season.lowest_percent, 0),
                high:
                  season.highest_percent - season.lowest_percent >= 1
                    ? fixed(season.highest_percent, 0)
                    : 'none',
                without: season.withoutHumidity,
              },
            )}
          </p>
        )}
        {season.lowest_percent === undefined && (
          <p className="question">
            {say('? No humidity was read that day: grip moves with the season. Take it under Pitch and air.')}
          </p>
        )}
      </section>
      {zone !== undefined && (
        <section className="torque-said" aria-labelledby="zone">
          <h3 id="zone">{say('What may still hide')}</h3>
          <p>
            {sayNodes(
              'A bad zone of {size} pins in a row would have been missed with a chance of {chance}, wherever it lies.',
              { size: zone.size, chance: <strong>{fixed(zone.chanceMissed * 100, 0)} %</strong> },
            )}
            {zone.next !== undefined && (
              <>
                {' '}
                {say('{note} string {string} next lowers it most, to {percent} %.', {
                  note: zone.next.note,
                  string: zone.next.string,
                  percent: fixed(zone.chanceAfterNext * 100, 0),
                })}
              </>
            )}
          </p>
          {zone.next !== undefined && (
            <button
              type="button"
              className="button"
              onClick={() => onRead({ key: zone.next!.key, string: zone.next!.string })}
            >
              {say('Read {note} string {string} next', { note: zone.next.note, string: zone.next.string })}
            </button>
          )}
        </section>
      )}
      <TableFrame label={say('Torque by section')}>
        <table className="table">
          <caption>{say('By section')}</caption>
          <TableHeads
            heads={[
              say('Section'),
              figures(say('Read')),
              figures(say('Mean grip')),
              figures(say('95 % interval')),
              figures(say('Lowest')),
              figures(say('Low')),
              figures(say('Zone missed')),
            ]}
          />
          <tbody>
            {map.sections.map(({ section, pins, withGrip, mean, low, lowest, zone: own }) => (
              <tr key={section}>
                <th scope="row">{section}</th>
                <td className="number">{say('{withGrip} of {pins}', { withGrip, pins })}</td>
                <td className="number">{mean === undefined ? say('not read') : text(mean.mean)}</td>
                <td className="number">
                  {mean?.interval === undefined
                    ? say('too few')
                    : say('{low} to {high}', {
                        low: text(mean.interval.low),
                        high: text(mean.interval.high),
                      })}
                </td>
                <td className="number">
                  {lowest?.grip === undefined ? '' : `${text(lowest.grip.grip)} (${lowest.name})`}
                </td>
                <td className="number">{low}</td>
                <td className="number">{own === undefined ? '' : `${fixed(own.chanceMissed * 100, 0)} %`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <TorqueBars map={map} unit={unit} />
      {without.length > 0 && (
        <details>
          <summary>
            {say('{without, plural, one {# pin has} other {# pins have}} a reading but no grip', {
              without: without.length,
            })}
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
        <summary>{say('Pin by pin')}</summary>
        <TableFrame label={say('Torque by pin')}>
          <table className="table">
            <caption>
              {say('Pin by pin: grip − pull = margin; a pin holds its string while the ratio is above 1')}
            </caption>
            <TableHeads
              heads={[
                say('Pin'),
                figures(say('Grip')),
                figures(say('String’s pull')),
                figures(say('Margin')),
                figures(say('Ratio')),
                say('From'),
                say('Feel'),
              ]}
            />
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
                      {pin.isLow === true && <span className="warn"> {say('low')}</span>}
                    </td>
                    <td className="number">
                      {pin.pull === undefined ? say('not known') : text(pin.pull.pull)}
                    </td>
                    <td className="number">{pin.margin === undefined ? '' : text(pin.margin)}</td>
                    <td className="number">
                      {pin.holdingRatio === undefined ? '' : fixed(pin.holdingRatio, 1)}
                    </td>
                    <td>{say(pin.grip!.from)}</td>
                    <td>{pin.feels.map((feel) => say(feel)).join(', ')}</td>
                  </tr>
                ))}
            </tbody>
          </table>
        </TableFrame>
      </details>
    </>
  );
}
