import type { ReadingQuantityName } from '@becket/journal';
import { memo, useState } from 'react';
import type { JobDesk } from '../../desk/job-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { usePart } from '../../parts/observable.ts';
import { type EnterOrder, enterOrders, type GridColumn } from './grid.ts';
import { InstrumentInHand } from './instrument-in-hand.tsx';
import { recordViewOf } from './record-state.ts';

const rounds = [1, 2, 3, 4] as const;
export const ordinals = ['1st', '2nd', '3rd', '4th'] as const;

interface Props {
  readonly desk: JobDesk;
  readonly columns: readonly GridColumn[];
  readonly column: ReadingQuantityName;
  readonly sections: readonly string[];
}

/** What is chosen above the grid. It stands apart, so that a value that is typed does not draw it again. */
export const GridTools = memo(function GridTools({ desk, columns, column, sections }: Props) {
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
          label="Unit"
          value={unit}
          onChange={(next) => device.settings.update({ unit: next })}
          options={[
            { value: 'mm', words: 'mm', spoken: 'millimetres' },
            { value: 'in', words: 'inch', spoken: 'inches' },
          ]}
        />
        <Choice
          label="Reading of each string"
          value={String(round)}
          onChange={(round) => view.update({ round: Number(round) })}
          options={rounds.map((round) => ({
            value: String(round),
            words: ordinals[round - 1]!,
            spoken: `${ordinals[round - 1]} reading of each string`,
          }))}
        />
        {sections.length > 1 && (
          <Field label="Show">
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={section ?? ''}
                onChange={(event) => view.update({ section: event.target.value || undefined })}
              >
                <option value="">whole compass</option>
                {sections.map((name) => (
                  <option key={name}>{name}</option>
                ))}
              </select>
            )}
          </Field>
        )}
        <div className="only-small">
          <Field label="Column">
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={column}
                onChange={(event) => view.update({ column: event.target.value as ReadingQuantityName })}
              >
                {columns.map(({ quantity, label }) => (
                  <option key={quantity} value={quantity}>
                    {label}
                  </option>
                ))}
              </select>
            )}
          </Field>
        </div>
        <button
          type="button"
          className="button quiet tools-switch"
          aria-label={areToolsOpen ? 'Less to choose' : 'More to choose'}
          aria-expanded={areToolsOpen}
          onClick={() => setToolsOpen(!areToolsOpen)}
        >
          {areToolsOpen ? 'Less' : 'More'}
        </button>
      </div>
      {areToolsOpen && (
        <div className="tools">
          <Field label="Enter goes to">
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={order}
                onChange={(event) => view.update({ order: event.target.value as EnterOrder })}
              >
                {(Object.keys(enterOrders) as EnterOrder[]).map((order) => (
                  <option key={order} value={order}>
                    {enterOrders[order]}
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
            front and back lengths, windings, pins
          </label>
        </div>
      )}
    </>
  );
});
