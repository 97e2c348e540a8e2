import type { ScaleAnalysis } from '@becket/core';
import type { PartLoadLimit, PlanRules } from '@becket/tasks';
import { useState } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { LoadField, type SetRules } from './limit-fields.tsx';
import { noMoreThanFound, withPartLoad } from './plan-limits.ts';

interface Props {
  readonly rules: PlanRules;
  readonly analysis: ScaleAnalysis;
  readonly set: SetRules;
}

/** Highest loads of single bridges and sections, folded away: few ask for them. */
export function PartLoads({ rules, analysis, set }: Props) {
  const { say } = useLanguage();
  const limits = rules.highestLoads ?? [];
  // Fields that keep what is typed begin anew when they are filled in from elsewhere.
  const [filled, setFilled] = useState(0);
  const fill = (highestLoads: readonly PartLoadLimit[]) => {
    set({ highestLoads });
    setFilled(filled + 1);
  };
  const parts = [
    ...analysis.bridges.map((part) => ({ ...part, of: 'bridge' as const })),
    ...analysis.sections.map((part) => ({ ...part, of: 'section' as const })),
  ].filter(({ notes }) => notes > 0);
  return (
    <details className="plan-rules">
      <summary className="button quiet">
        {say('Highest load of single bridges and sections{count, plural, =0 {} other {: # asked}}', {
          count: limits.length,
        })}
      </summary>
      <p className="faint">
        {say(
          'Where a bridge, or the soundboard under it, is in doubt: no more than was found. Whether it bears that is for whoever knows the structure.',
        )}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="button"
          onClick={() => fill(noMoreThanFound(limits, 'bridge', analysis.bridges))}
        >
          {say('No bridge above as found')}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => fill(noMoreThanFound(limits, 'section', analysis.sections))}
        >
          {say('No section above as found')}
        </button>
        {limits.length > 0 && (
          <button type="button" className="button quiet" onClick={() => fill([])}>
            {say('Ask for none of these')}
          </button>
        )}
      </div>
      <div className="fields">
        {parts.map(({ of, name, load }) => (
          <LoadField
            key={`${filled} ${of} ${name}`}
            label={say('{of, select, bridge {Bridge} other {Section}} “{name}”, highest load (kN)', {
              of,
              name,
            })}
            value={limits.find((limit) => limit.of === of && limit.name === name)?.highest_n}
            found={load}
            onChange={(highest_n) => set({ highestLoads: withPartLoad(limits, { of, name }, highest_n) })}
          />
        ))}
      </div>
    </details>
  );
}
