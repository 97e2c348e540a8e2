import { inKilonewtons, noteName } from '@becket/core';
import type { PassPlan, SectionPlan, Settling } from '@becket/journal';
import { planRemarks } from '@becket/tasks';
import { type ScreenLanguage, useLanguage } from '../../parts/language.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { limitInWords, OverpullLimit } from './overpull-limit.tsx';
import { offsetText } from './settle-state.ts';

/** How far to pull each section in the next pass, and what that rests on. */
export function PlanTable({ settling, plan }: { settling: Settling; plan: PassPlan }) {
  const language = useLanguage();
  const { say, plain } = language;
  const remarks = planRemarks(settling, plan, language);
  return (
    <section aria-labelledby="plan">
      <h3 id="plan">{say('How far to pull in pass {pass}', { pass: plan.pass })}</h3>
      <TableFrame label={say('Overpull by section')}>
        <table className="table settle-plan">
          <TableHeads
            heads={[
              say('Section'),
              figures(say('Overpull')),
              figures(say('At most')),
              figures(say('Stands at')),
              figures(say('Share lost')),
              figures(say('Load')),
            ]}
          />
          <tbody>
            {plan.sections.map((section) => (
              <PlanRow key={section.section} plan={section} language={language} />
            ))}
          </tbody>
        </table>
      </TableFrame>
      <p className="faint">
        {say(
          'Cents from A4 = {pitch} Hz, with one standard uncertainty. At most: where the first string comes to {share} % of its break load ({source}; {table}).',
          {
            pitch: plain(plan.referencePitch_hz),
            ...limitInWords(plan.limits, language),
          },
        )}
      </p>
      <OverpullLimit limits={plan.limits} />
      {remarks.length > 0 && (
        <ul aria-label={say('What the plan rests on')}>
          {remarks.map((remark) => (
            <li key={remark}>{remark}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

function PlanRow({ plan, language }: { plan: SectionPlan; language: ScreenLanguage }) {
  const { say, fixed } = language;
  const { section, stands, next, highestOffset, limit, fallBack, isDefault } = plan;
  const unknown = <span className="faint">{say('unknown')}</span>;
  return (
    <tr>
      <th scope="row">{section}</th>
      <td className="number">
        {next === undefined ? (
          <span className="faint">{say('not told')}</span>
        ) : (
          <>
            <strong className="settle-told">{fixed(next.overpull, 1)}</strong>{' '}
            <span className="faint">± {fixed(next.standardUncertainty, 1)}</span>
            {next.isLimited && <span className="warn"> ▲ {say('at the limit')}</span>}
          </>
        )}
      </td>
      <td className="number">
        {highestOffset === undefined || limit.nearest === undefined ? (
          unknown
        ) : (
          <>
            {fixed(Math.max(0, Math.floor(highestOffset * 10) / 10), 1)}{' '}
            <span className="faint">{noteName(limit.nearest.key)}</span>
          </>
        )}
      </td>
      <td className="number">
        {stands === undefined ? (
          unknown
        ) : (
          <>
            {offsetText(stands.offset, language)}{' '}
            <span className="faint">
              ± {fixed(stands.standardUncertainty, 1)}{' '}
              {stands.from === 'read' ? say('[an offset] read') : say('[an offset] foretold')}
            </span>
          </>
        )}
      </td>
      <td className="number">
        {fixed(fallBack.share * 100, 0)} %{' '}
        <span className="faint">
          ± {fixed(fallBack.standardUncertainty * 100, 0)}{' '}
          {isDefault
            ? say('starting figure')
            : say('{count, plural, one {# fall} other {# falls}}', { count: fallBack.shares.length })}
        </span>
      </td>
      <td className="number">
        {limit.computed === 0 ? unknown : `${fixed(inKilonewtons(limit.load), 1)} kN`}
      </td>
    </tr>
  );
}
