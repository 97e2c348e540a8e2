import './settle.css';
import { offsetOf, type Pass, type PassValue } from '@becket/journal';
import { useLanguage } from '../../parts/language.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { offsetText } from './settle-state.ts';
import { SettlingChart } from './settling-chart.tsx';
import { useSettling } from './use-settling.ts';

/** How the piano went from pass to pass. */
export function CoursePlace() {
  const { say } = useLanguage();
  const { settling } = useSettling();
  return (
    <section aria-labelledby="course">
      <h2 id="course">{say('Where did each section stand?')}</h2>
      {settling.passes.length === 0 ? (
        <p>{say('No pass is recorded yet. Begin one under The pass.')}</p>
      ) : (
        <>
          <SettlingChart settling={settling} />
          {[...settling.passes].reverse().map((pass) => (
            <PassTable
              key={pass.entry}
              pass={pass}
              next={settling.passes[settling.passes.indexOf(pass) + 1]}
            />
          ))}
        </>
      )}
    </section>
  );
}

function PassTable({ pass, next }: { pass: Pass; next: Pass | undefined }) {
  const language = useLanguage();
  const { say, day, plain, fixed } = language;
  const notRead = <span className="faint">{say('not read')}</span>;
  const value = (values: readonly PassValue[] | undefined) => {
    const mean = offsetOf(values);
    return mean === undefined ? notRead : offsetText(mean.offset, language);
  };
  const title = say('Pass {pass}, {day}, A4 = {pitch} Hz', {
    pass: pass.pass,
    day: day(pass.on),
    pitch: plain(pass.referencePitch_hz),
  });
  return (
    <>
      <h3>{title}</h3>
      <p className="faint">
        {pass.temperature_c === undefined ? say('temperature not read') : `${plain(pass.temperature_c)} °C`};{' '}
        {pass.relativeHumidity_percent === undefined
          ? say('humidity not read')
          : say('{percent} % relative humidity', { percent: plain(pass.relativeHumidity_percent) })}
        ;{' '}
        {say('{count, plural, =0 {nothing broke or slipped was noted} one {# mishap} other {# mishaps}}', {
          count: pass.mishaps.length,
        })}
        ; {pass.by}
      </p>
      <TableFrame label={title}>
        <table className="table">
          <TableHeads
            heads={[
              say('Section'),
              figures(say('[of a pass] before')),
              figures(say('aimed at')),
              figures(say('left at')),
              figures(say('lost')),
            ]}
          />
          <tbody>
            {pass.sections.map(({ section, before, aimed, after }) => {
              const [from, to, later] = [
                offsetOf(before),
                offsetOf(after),
                offsetOf(next?.sections.find((one) => one.section === section)?.before),
              ];
              const raise = from === undefined || to === undefined ? 0 : to.offset - from.offset;
              const higherBy =
                next === undefined ? 0 : 1200 * Math.log2(next.referencePitch_hz / pass.referencePitch_hz);
              return (
                <tr key={section}>
                  <th scope="row">{section}</th>
                  <td className="number">{value(before)}</td>
                  <td className="number">
                    {aimed.length === 0 ? <span className="faint">{say('none said')}</span> : value(aimed)}
                  </td>
                  <td className="number">{value(after)}</td>
                  <td className="number">
                    {to === undefined || later === undefined || raise <= 0 ? (
                      <span className="faint">{say('not known yet')}</span>
                    ) : (
                      `${fixed((100 * (to.offset - later.offset - higherBy)) / raise, 0)} %`
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </TableFrame>
    </>
  );
}
