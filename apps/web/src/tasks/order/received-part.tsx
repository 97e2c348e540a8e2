import { noteName } from '@becket/core';
import { type Order, type Orders, type ReceivedQuantity, receivedQuantities } from '@becket/journal';
import {
  acceptDifference,
  type ReceivedComparison,
  receivedQuantityNames,
  receivedStrings,
  receivedTolerancesOf,
  receiveGoods,
} from '@becket/tasks';
import { type FormEvent, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { useShop } from '../../desk/use-shop.ts';
import { todayHere } from '../../parts/day-field.tsx';
import { entryForm } from '../../parts/entry-form.ts';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { type MeasureForm, measureOf, stringAfter } from './received-form.ts';

/** What was measured of a bass set that came, against its order. */
export function Received({ order, all }: { order: Order; all: Orders }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { unit } = useSettings();
  const { settings } = useDevice();
  const [entry] = useState(() =>
    entryForm<MeasureForm>({ string: '', quantity: 'core-diameter', value: '' }),
  );
  const { form, problem } = useObservable(entry.state);
  const [accepting, setAccepting] = useState<ReceivedComparison>();
  const { comparisons, notMeasured, mayBeStrung } = receivedStrings(
    order,
    all.signed,
    receivedTolerancesOf(useShop().allowances),
    language,
  );
  const beyond = comparisons.filter(({ is, signed }) => is === 'beyond tolerance' && signed === undefined);

  function keep(event: FormEvent): void {
    event.preventDefault();
    void entry.keep((typed) => {
      const measure = measureOf(order, typed, unit, todayHere(), language);
      return {
        // The next string is what a hand goes on to: Enter, and measure.
        next: { ...typed, string: stringAfter(order, typed.string), value: '' },
        kept: desk.runHere((context, job) => receiveGoods(context, job, measure)),
      };
    });
  }
  return (
    <section aria-label={say('Measured when it came')}>
      <h4>{say('Measured when it came')}</h4>
      <p className={beyond.length > 0 ? 'notice bad' : 'notice'}>
        {mayBeStrung
          ? say('● Every string is here, measured, and as ordered or taken by name.')
          : say('▲ Do not string this set yet: {what}.', {
              what: [
                ...(order.state === 'delivered' ? [] : [say('not all of it is here')]),
                ...(beyond.length === 0
                  ? []
                  : [
                      say(
                        '{count, plural, one {# reading differs} other {# readings differ}} from the order',
                        { count: beyond.length },
                      ),
                    ]),
                ...(notMeasured.length === 0
                  ? []
                  : [
                      say('{count, plural, one {# string is} other {# strings are}} not measured', {
                        count: notMeasured.length,
                      }),
                    ]),
              ].join(', '),
            })}
      </p>
      <form className="order-form" onSubmit={keep} aria-label={say('Measure a string')}>
        <SelectField
          label={say('[of a note] String')}
          value={form.string}
          onChange={(string) => entry.take({ string })}
          options={[
            { value: '', words: say('choose') },
            ...order.bassStrings.map(({ key, string }) => ({
              value: `${key}/${string}`,
              words: say('{note} string {string}', { note: noteName(key), string }),
            })),
          ]}
        />
        <SelectField<ReceivedQuantity>
          label={say('What')}
          value={form.quantity}
          onChange={(quantity) => entry.take({ quantity })}
          options={receivedQuantities.map((quantity) => ({
            value: quantity,
            words: say(receivedQuantityNames[quantity]),
          }))}
        />
        <TextField
          label={say('Reading, {unit}', { unit })}
          value={form.value}
          onChange={(value) => entry.take({ value })}
          problem={problem}
          maxLength={30}
          isNumber
        />
        <button type="submit" className="button">
          {say('Keep the reading')}
        </button>
      </form>
      {comparisons.length > 0 && (
        <ul className="order-lines">
          {comparisons.map((one) => (
            <li key={one.id} className="order-line">
              {one.is === 'within tolerance' ? '● ' : one.signed === undefined ? '▲ ' : '◆ '}
              {one.sentence}
              {one.signed !== undefined && (
                <span className="soft">
                  {' '}
                  {say('Taken by {name}: {reason}', { name: one.signed.name, reason: one.signed.reason })}
                </span>
              )}
              {one.is === 'beyond tolerance' && one.signed === undefined && (
                <div className="button-row">
                  <button type="button" className="button quiet" onClick={() => setAccepting(one)}>
                    {say('Take it all the same')}
                  </button>
                </div>
              )}
            </li>
          ))}
        </ul>
      )}
      {accepting !== undefined && (
        <AcceptSheet
          difference={accepting}
          order={order}
          by={settings.get().name}
          onClose={() => setAccepting(undefined)}
        />
      )}
    </section>
  );
}

function AcceptSheet({
  difference,
  order,
  by,
  onClose,
}: {
  difference: ReceivedComparison;
  order: Order;
  by: string;
  onClose: () => void;
}) {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const [name, setName] = useState(by);
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string>();
  async function keep(): Promise<void> {
    const done = await desk.run((context, job) =>
      acceptDifference(context, job, { order: order.id, id: difference.id, name, reason }),
    );
    if (done === undefined) setProblem(desk.problem.get());
    else onClose();
  }
  return (
    <FormSheet
      title={say('Take this string as it came')}
      keep={say('Take it by name')}
      canKeep={name.trim() !== '' && reason.trim() !== ''}
      problem={problem}
      onKeep={keep}
      onClose={onClose}
    >
      <p>{difference.sentence}</p>
      <TextField label={say('Who answers for it')} value={name} onChange={setName} maxLength={200} />
      <TextField label={say('Why')} value={reason} onChange={setReason} rows={2} />
    </FormSheet>
  );
}
