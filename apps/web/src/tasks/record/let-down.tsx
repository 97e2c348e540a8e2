import { english, inDegrees, type Language, letDownCautions, type Radians } from '@becket/core';
import { letDownOf, letDownPasses } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { loadText } from '../../parts/force-text.ts';
import { useLanguage } from '../../parts/language.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { printPart } from './print-part.ts';
import './record-parts.css';

/** How far to turn a pin: degrees, and eighths of a turn beside them. */
function turnText(turn: Radians, { fixed, say }: Language = english): string {
  const angle = inDegrees(turn);
  return say('{degrees}° ({eighths} eighths)', { degrees: fixed(angle, 0), eighths: fixed(angle / 45, 1) });
}

/** The let-down plan: pass by pass, section by section, with its cautions first. */
export function LetDownPlan() {
  const language = useLanguage();
  const { fixed, say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const [passes, setPasses] = useState<(typeof letDownPasses)[number]>(4);
  const plan = useMemo(() => letDownOf(job, passes, language), [job, passes, language]);
  return (
    <section aria-labelledby="let-down" className="let-down">
      <h3 id="let-down">{say('Letting the strings down')}</h3>
      <ul className="notice cautions">
        {letDownCautions.map((caution) => (
          <li key={caution}>▲ {say(caution)}</li>
        ))}
      </ul>
      {plan === undefined ? (
        <p>
          {say(
            'No plan can be made yet: sections and the tension of some strings are needed. Let the strings down evenly over the whole plate, in several passes, never one section alone.',
          )}
        </p>
      ) : (
        <>
          <div className="tools">
            <Choice
              label={say('Passes')}
              value={String(passes)}
              onChange={(value) => setPasses(Number(value) as typeof passes)}
              options={letDownPasses.map((value) => ({
                value: String(value),
                words: String(value),
                spoken: say('{passes} passes', { passes: value }),
              }))}
            />
            <button type="button" className="button" onClick={() => printPart('let-down')}>
              {say('Print the plan')}
            </button>
          </div>
          <p className="faint">
            {say(
              'For {title}: {strings} strings. Each pass takes the same share off every string; turn each pin towards flat by the middle figure, less on the short wires, more on the long ones.',
              { title: job.title, strings: plan.strings },
            )}
          </p>
          {plan.passes.map(({ pass, steps }) => (
            <TableFrame label={say('Pass {pass}', { pass })} key={pass}>
              <table className="table let-down-table">
                <caption>
                  <strong>{say('Pass {pass}', { pass })}</strong>
                  {pass === plan.passes.length ? `, ${say('until every string is slack')}` : ''}
                </caption>
                <thead>
                  <tr>
                    <th scope="col">{say('section')}</th>
                    <th scope="col">{say('turn of each pin (eighths of a turn)')}</th>
                    <th scope="col">{say('from – to')}</th>
                    <th scope="col" className="number">
                      {say('its load')}
                    </th>
                    <th scope="col" className="number">
                      {say('plate')}
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {steps.map(({ section, turn, load, totalLoad }, index) => (
                    <tr key={section}>
                      <th scope="row">
                        {index + 1}. {section}
                      </th>
                      <td>{turnText(turn.middle, language)}</td>
                      <td>
                        {fixed(inDegrees(turn.least), 0)}° – {fixed(inDegrees(turn.most), 0)}°
                      </td>
                      <td className="number">{loadText(load, unit, language)}</td>
                      <td className="number">{loadText(totalLoad, unit, language)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </TableFrame>
          ))}
          <ul className="faint">
            {plan.assumptions.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
            {plan.leftOut.length > 0 && (
              <li>
                {say(
                  'Not reckoned, as their tension is not known: {what}. Let them down with their neighbours; the loads are without them.',
                  { what: plan.leftOut.join(', ') },
                )}
              </li>
            )}
            <li>{say('Friction at the bearings makes the real turn somewhat larger than the figure.')}</li>
          </ul>
        </>
      )}
    </section>
  );
}
