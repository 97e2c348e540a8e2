import type { PinChoice } from '@becket/tasks';
import { useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, lengthText } from '../../parts/length-text.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';

interface Props {
  readonly group: PinChoice['groups'][number];
  readonly unit: LengthUnit;
}

/** The pins that were found in one size: what the rule advises for them, and what else could go in. */
export function PinGroup({ group, unit }: Props) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const text = (length: number) => lengthText(length, unit, 'diameter', language);
  return (
    <section className="pin-group" aria-label={say('Pins found as {asFound}', { asFound: group.asFound })}>
      <h4>
        {sayNodes('Found as {size} {spread}', {
          size: group.asFound,
          spread: (
            <span className="faint">
              {say('{pins} measured, {smallest} to {largest}', {
                pins: group.pins.length,
                smallest: text(group.smallest),
                largest: text(group.largest),
              })}
            </span>
          ),
        })}
      </h4>
      <p>{group.advice?.sentence ?? group.adviceRestsOn}</p>
      {group.advice !== undefined && <p className="faint">{group.adviceRestsOn}</p>}
      {group.doubtful > 0 && (
        <p className="question">
          {say('? {doubtful} of these lie between sizes: measure them again, away from the coil.', {
            doubtful: group.doubtful,
          })}
        </p>
      )}
      {group.candidates.length > 0 && <Candidates group={group} unit={unit} />}
    </section>
  );
}

/** Every size above the one found, with what stands against it. */
function Candidates({ group, unit }: Props) {
  const language = useLanguage();
  const { fixed, say } = language;
  const text = (length: number) => lengthText(length, unit, 'diameter', language);
  return (
    <TableFrame label={say('Sizes above {asFound}', { asFound: group.asFound })}>
      <table className="table">
        <TableHeads
          heads={[
            say('Size'),
            figures(say('Diameter')),
            figures(say('Larger by')),
            figures(say('Share below firm')),
            say('What stands against it'),
          ]}
        />
        <tbody>
          {group.candidates.map(({ label, diameter, larger, isAdvised, against, unknown, expected }) => (
            <tr key={label} className={isAdvised ? 'is-advised' : undefined}>
              <th scope="row" className="one-line">
                {label}
                {isAdvised && ` ◂ ${say('the rule')}`}
              </th>
              <td className="number">{text(diameter)}</td>
              <td className="number">{text(larger)}</td>
              <td className="number">
                {expected === undefined ? (
                  <span className="faint">{say('no law yet')}</span>
                ) : (
                  `${fixed(expected.shareBelowFirm * 100, 0)} %`
                )}
              </td>
              <td>
                {against.map((sentence) => (
                  <p key={sentence} className="warn">
                    ▲ {sentence}
                  </p>
                ))}
                {unknown.map((sentence) => (
                  <p key={sentence} className="faint">
                    ? {sentence}
                  </p>
                ))}
                {against.length + unknown.length === 0 && say('nothing known')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
