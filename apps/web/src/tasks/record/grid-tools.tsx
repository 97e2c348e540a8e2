import { message } from '@becket/core';
import type { ReadingQuantityName } from '@becket/journal';
import { memo, useState } from 'react';
import type { JobDesk } from '../../desk/job-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { usePart } from '../../parts/observable.ts';
import { type EnterOrder, enterOrders, type GridColumn } from './grid.ts';
import { InstrumentInHand } from './instrument-in-hand.tsx';
import { recordViewOf } from './record-state.ts';

const rounds = [1, 2, 3, 4] as const;
export const ordinals = [message('1st'), message('2nd'), message('3rd'), message('4th')] as const;

interface Props {
  readonly desk: JobDesk;
  readonly columns: readonly GridColumn[];
  readonly column: ReadingQuantityName;
  readonly sections: readonly string[];
}

/** What is chosen above the grid. It stands apart, so that a value that is typed does not draw it again. */
export const GridTools = memo(function GridTools({ desk, columns, column, sections }: Props) {
  const { say } = useLanguage();
  const device = useDevice();
  const { unit } = useSettings();
  const view = recordViewOf(desk.id);
  const section = usePart(view, (shown) => shown.section);
  const round = usePart(view, (shown) => shown.round);
  const order = usePart(view, (shown) => shown.order);
  const withFurther = usePart(view, (shown) => shown.withFurther);
  const [areToolsOpen, setToolsOpen] = useState(false);
  return (
    <>
      <div className="tools">
        <Choice
          label={say('Unit')}
          value={unit}
          onChange={(next) => device.settings.update({ unit: next })}
          options={[
            { value: 'mm', words: 'mm', spoken: say('millimetres') },
            { value: 'in', words: say('inch'), spoken: say('inches') },
          ]}
        />
        <Choice
          label={say('Reading of each string')}
          value={String(round)}
          onChange={(round) => view.update({ round: Number(round) })}
          options={rounds.map((round) => ({
            value: String(round),
            words: say(ordinals[round - 1]!),
            spoken: say('{ordinal} reading of each string', { ordinal: say(ordinals[round - 1]!) }),
          }))}
        />
        {sections.length > 1 && (
          <Field label={say('Show')}>
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={section ?? ''}
                onChange={(event) => view.update({ section: event.target.value || undefined })}
              >
                <option value="">{say('whole compass')}</option>
                {sections.map((name) => (
                  <option key={name}>{name}</option>
                ))}
              </select>
            )}
          </Field>
        )}
        <div className="only-small">
          <Field label={say('Column')}>
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={column}
                onChange={(event) => view.update({ column: event.target.value as ReadingQuantityName })}
              >
                {columns.map(({ quantity, label }) => (
                  <option key={quantity} value={quantity}>
                    {say(label)}
                  </option>
                ))}
              </select>
            )}
          </Field>
        </div>
        <button
          type="button"
          className="button quiet tools-switch"
          aria-label={areToolsOpen ? say('Less to choose') : say('More to choose')}
          aria-expanded={areToolsOpen}
          onClick={() => setToolsOpen(!areToolsOpen)}
        >
          {areToolsOpen ? say('Less') : say('More')}
        </button>
      </div>
      {areToolsOpen && (
        <div className="tools">
          <Field label={say('Enter goes to')}>
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={order}
                onChange={(event) => view.update({ order: event.target.value as EnterOrder })}
              >
                {(Object.keys(enterOrders) as EnterOrder[]).map((order) => (
                  <option key={order} value={order}>
                    {say(enterOrders[order])}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <InstrumentInHand quantity={column} />
          <label className="tick tools-switch">
            <input
              type="checkbox"
              checked={withFurther}
              onChange={(event) => view.update({ withFurther: event.target.checked })}
            />
            {say('front and back lengths, windings, pins')}
          </label>
        </div>
      )}
    </>
  );
});
