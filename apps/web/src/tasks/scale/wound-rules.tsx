import type { ScaleAnalysis } from '@becket/core';
import type { PlanRules } from '@becket/tasks';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { RatioField, RunField, type SetRules } from './limit-fields.tsx';

interface Props {
  readonly rules: PlanRules;
  readonly bridges: ScaleAnalysis['bridges'];
  readonly set: SetRules;
}

/** Whether wound strings are chosen anew, and then within what. */
export function WoundRules({ rules, bridges, set }: Props) {
  const { say } = useLanguage();
  return (
    <>
      <Choice
        label={say('Wound strings')}
        value={rules.woundToo ? 'anew' : 'keep'}
        onChange={(value) => set({ woundToo: value === 'anew' })}
        options={[
          { value: 'keep', words: say('keep as found') },
          { value: 'anew', words: say('choose anew') },
        ]}
      />
      {rules.woundToo && <WoundLimits rules={rules} bridges={bridges} set={set} />}
      {rules.woundToo && (
        <Choice
          label={say('The break from wound to plain may move by')}
          value={String(rules.breakMayMove)}
          onChange={(value) => set({ breakMayMove: Number(value) })}
          options={['0', '1', '2', '3'].map((value) => ({
            value,
            words:
              value === '0'
                ? say('[how far] nothing')
                : say('{count, plural, one {# note} other {# notes}}', { count: Number(value) }),
          }))}
        />
      )}
    </>
  );
}

/** What no wound string may break where they are chosen anew. */
function WoundLimits({ rules, bridges, set }: Props) {
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
