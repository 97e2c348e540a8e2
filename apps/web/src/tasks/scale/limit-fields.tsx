import type { ScaleAnalysis } from '@becket/core';
import type { PartLoadLimit, PlanRules } from '@becket/tasks';
import { useState } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { noMoreThanFound, typedLoad, typedPercent, typedRatio, withPartLoad } from './propose-state.ts';

export type SetRules = (part: Partial<PlanRules>) => void;

interface PartLoadsProps {
  readonly rules: PlanRules;
  readonly analysis: ScaleAnalysis;
  readonly set: SetRules;
}

/** Highest loads of single bridges and sections, folded away: few ask for them. */
export function PartLoads({ rules, analysis, set }: PartLoadsProps) {
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

interface WoundLimitsProps {
  readonly rules: PlanRules;
  readonly bridges: ScaleAnalysis['bridges'];
  readonly set: SetRules;
}

/** What no wound string may break where they are chosen anew. */
export function WoundLimits({ rules, bridges, set }: WoundLimitsProps) {
  const { say } = useLanguage();
  const plain = rules.plainBridges ?? [];
  return (
    <>
      <div className="fields">
        <RunField
          label={say('A core size serves at least')}
          value={rules.minimumRunCore}
          onChange={(minimumRunCore) => set({ minimumRunCore })}
        />
        <RatioField
          label={say('Diameter over the winding, at most so many cores')}
          value={rules.largestOverCore}
          onChange={(largestOverCore) => set({ largestOverCore })}
        />
      </div>
      {bridges.length > 1 && (
        <fieldset className="choice">
          <legend className="choice-label">{say('Wound strings may stand on')}</legend>
          {bridges.map(({ name }) => (
            <label key={name} className="tick">
              <input
                type="checkbox"
                checked={!plain.includes(name)}
                onChange={(event) =>
                  set({
                    plainBridges: event.target.checked
                      ? plain.filter((one) => one !== name)
                      : [...plain, name],
                  })
                }
              />
              {say('the bridge “{name}”', { name })}
            </label>
          ))}
        </fieldset>
      )}
    </>
  );
}

interface RunProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (notes: number) => void;
}

export function RunField({ label, value, onChange }: RunProps) {
  const { say } = useLanguage();
  return (
    <SelectField
      label={label}
      value={String(value)}
      onChange={(notes) => onChange(Number(notes))}
      options={['1', '2', '3', '4', '5', '6'].map((notes) => ({
        value: notes,
        words: say('{count, plural, one {# note} other {# notes in a row}}', { count: Number(notes) }),
      }))}
    />
  );
}

interface RatioProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (ratio: number) => void;
}

function RatioField({ label, value, onChange }: RatioProps) {
  const { plain, say } = useLanguage();
  const [text, setText] = useState(plain(value));
  return (
    <TextField
      label={label}
      isNumber
      maxLength={6}
      value={text}
      problem={typedRatio(text) === undefined ? say('A number from 1 is needed, such as 4.5.') : undefined}
      onChange={(next) => {
        setText(next);
        const ratio = typedRatio(next);
        if (ratio !== undefined) onChange(ratio);
      }}
    />
  );
}

interface LoadProps {
  readonly label: string;
  readonly value: number | undefined;
  /** What was found [N]. */
  readonly found: number;
  readonly onChange: (load: number | undefined) => void;
}

export function LoadField({ label, value, found, onChange }: LoadProps) {
  const { fixed, plain, say } = useLanguage();
  const [text, setText] = useState(value === undefined ? '' : plain(value / 1000));
  return (
    <TextField
      label={label}
      hint={say('As found {load} kN. Left empty, none is asked.', { load: fixed(found / 1000, 1) })}
      isNumber
      maxLength={8}
      value={text}
      problem={typedLoad(text) === undefined ? say('A load above 0 kN is needed, or nothing.') : undefined}
      onChange={(next) => {
        setText(next);
        const load = typedLoad(next);
        if (load !== undefined) onChange(load === 'none' ? undefined : load);
      }}
    />
  );
}

interface PercentProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (share: number) => void;
}

export function PercentField({ label, value, onChange }: PercentProps) {
  const { plain, say } = useLanguage();
  const [text, setText] = useState(plain(Math.round(value * 1000) / 10));
  return (
    <TextField
      label={label}
      isNumber
      maxLength={6}
      value={text}
      problem={typedPercent(text) === undefined ? say('A number between 0 and 100 is needed.') : undefined}
      onChange={(next) => {
        setText(next);
        const share = typedPercent(next);
        if (share !== undefined) onChange(share);
      }}
    />
  );
}
