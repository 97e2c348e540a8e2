import { compareTorqueMaps, type PinTorqueMap } from '@becket/tasks';
import { useMemo } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { TorqueChart } from './torque-chart.tsx';
import { torqueIn } from './torque-state.ts';

interface Props {
  readonly before: PinTorqueMap;
  readonly after: PinTorqueMap;
  readonly unit: 'mm' | 'in';
}

/** The block before and after, side by side, pin by pin. */
export function TorqueCompare({ before, after, unit }: Props) {
  const language = useLanguage();
  const { say } = language;
  const { pins, readBothTimes, lowAfter } = useMemo(
    () => compareTorqueMaps({ before, after }, language),
    [before, after, language],
  );
  const text = (torque: number) => torqueIn(torque, unit, language);
  return (
    <section aria-labelledby="before-after">
      <h3 id="before-after">{say('Before and after stringing')}</h3>
      <p>
        {say(
          '{both, plural, one {# pin was} other {# pins were}} read both times; {low, plural, one {# of the newly strung is} other {# of the newly strung are}} below {torque}.',
          { both: readBothTimes, low: lowAfter, torque: text(after.lowBelow) },
        )}
      </p>
      <div className="side-by-side">
        <div>
          <h4>{say('As found')}</h4>
          <TorqueChart map={before} unit={unit} chosen={undefined} onChoose={() => {}} />
        </div>
        <div>
          <h4>{say('Newly strung')}</h4>
          <TorqueChart map={after} unit={unit} chosen={undefined} onChoose={() => {}} />
        </div>
      </div>
      <TableFrame label={say('Grip before and after')}>
        <table className="table">
          <TableHeads
            heads={[
              say('Pin'),
              figures(say('As found')),
              figures(say('Newly strung')),
              figures(say('Gained')),
            ]}
          />
          <tbody>
            {pins
              .filter(({ state }) => state !== 'not read again')
              .map(({ name, before: one, after: two, gained, gainedUncertainty }) => (
                <tr key={name}>
                  <th scope="row" className="one-line">
                    {name}
                  </th>
                  <td className="number">
                    {one?.grip === undefined ? say('not known') : text(one.grip.grip)}
                  </td>
                  <td className="number">
                    {two?.grip === undefined ? say('not known') : text(two.grip.grip)}
                    {two?.isLow === true && <span className="warn"> {say('low')}</span>}
                  </td>
                  <td className="number">
                    {gained === undefined
                      ? ''
                      : `${text(gained)}${gainedUncertainty === undefined ? '' : ` ± ${text(gainedUncertainty)}`}`}
                  </td>
                </tr>
              ))}
          </tbody>
        </table>
      </TableFrame>
    </section>
  );
}
