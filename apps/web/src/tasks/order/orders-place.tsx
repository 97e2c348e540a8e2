import { message } from '@becket/core';
import type { Order, Orders, Ulid } from '@becket/journal';
import { moveOrder, receiveGoods, undoDelivery } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useShop } from '../../desk/use-shop.ts';
import { DayField, todayHere } from '../../parts/day-field.tsx';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { priceText } from './order-words.ts';
import { deliveryOf, type TypedCounts } from './received-form.ts';
import { Received } from './received-part.tsx';
import { useOrders } from './use-supplies.ts';

/** The orders of the job: their states, what came, and whether it is what was ordered. */
export function OrdersPlace() {
  const { say, sayNodes } = useLanguage();
  const { desk } = useDesk();
  const orders = useOrders();
  const shop = useShop();
  const link = (part: string) => hashOf({ place: 'job', job: desk.id, task: 'order', part });
  return (
    <section aria-labelledby="orders">
      <h2 id="orders">{say('Orders')}</h2>
      {orders.orders.length === 0 ? (
        <p>
          {sayNodes('Nothing is ordered yet. Draft an order under {supplies} or {bass}.', {
            supplies: <a href={link('supplies')}>{say('Supplies')}</a>,
            bass: <a href={link('bass')}>{say('Bass strings')}</a>,
          })}
        </p>
      ) : (
        [...orders.orders].reverse().map((order) => <OrderCard key={order.id} order={order} all={orders} />)
      )}
      {shop.orders.orders.length > 0 && (
        <>
          <h2>{say('For the shelf')}</h2>
          {[...shop.orders.orders].reverse().map((order) => (
            <OrderCard key={order.id} order={order} all={shop.orders} />
          ))}
        </>
      )}
    </section>
  );
}

const signs: Readonly<Record<Order['state'], string>> = {
  drafted: '○',
  sent: '◔',
  confirmed: '◑',
  'partly delivered': '◕',
  delivered: '●',
  cancelled: '✕',
};

function OrderCard({ order, all }: { order: Order; all: Orders }) {
  const language = useLanguage();
  const { day, localDay, say } = language;
  const onDay = (on: string | undefined) => (on === undefined ? 'none' : day(on));
  const [asked, setAsked] = useState<'sent' | 'confirmed' | 'cancelled' | 'received'>();
  const [undone, setUndone] = useState<Ulid>();
  const { state, supplier, what, lines } = order;
  const isOpen = state !== 'delivered' && state !== 'cancelled';
  const total = lines.reduce((sum, { quantity, priceMinorUnits = 0 }) => sum + quantity * priceMinorUnits, 0);
  return (
    <article className="order-card" aria-label={say('Order to {supplier}', { supplier })}>
      <h3>
        {supplier}: {say(what)}
      </h3>
      <p>
        <strong>
          {signs[state]} {say(state)}
        </strong>{' '}
        <span className="soft">
          {say(
            'drafted {day} by {by}{sent, select, none {} other {, sent {sent}}}{expected, select, none {} other {, expected {expected}}}{needed, select, none {} other {, needed {needed}}}',
            {
              day: localDay(order.draftedAt),
              by: order.by,
              sent: onDay(order.sentOn),
              expected: onDay(order.expectedOn),
              needed: onDay(order.neededOn),
            },
          )}
        </span>
      </p>
      <details>
        <summary>
          {say('{count, plural, one {# line} other {# lines}}', { count: lines.length })}
          {order.currency !== undefined && `, ${priceText(total, order.currency, language)}`}
        </summary>
        <ul className="order-buy">
          {lines.map(({ line, what: thing, quantity, unit, received, outstanding }) => (
            <li key={line}>
              <span>
                {quantity} {unit}: {thing}
              </span>
              <span className="soft">
                {outstanding === 0
                  ? say('here')
                  : say('{received} of {quantity} here', { received, quantity })}
              </span>
            </li>
          ))}
        </ul>
      </details>
      <div className="button-row">
        {(state === 'drafted' || state === 'cancelled') && (
          <button type="button" className="button" onClick={() => setAsked('sent')}>
            {say('It was sent')}
          </button>
        )}
        {state === 'sent' && (
          <button type="button" className="button" onClick={() => setAsked('confirmed')}>
            {say('It was confirmed')}
          </button>
        )}
        {isOpen && state !== 'drafted' && (
          <button type="button" className="button strong" onClick={() => setAsked('received')}>
            {say('Goods received')}
          </button>
        )}
        {isOpen && (
          <button type="button" className="button quiet" onClick={() => setAsked('cancelled')}>
            {say('Cancel the order')}
          </button>
        )}
      </div>
      {order.deliveries.some((delivery) => delivery.lines.length > 0) && (
        <ul>
          {order.deliveries
            .filter((delivery) => delivery.lines.length > 0)
            .map(({ entry, on, by, lines: came }) => (
              <li key={entry}>
                {say('{came, plural, one {# line} other {# lines}} came {on}, noted by {by}', {
                  came: came.length,
                  on: day(on),
                  by,
                })}{' '}
                <button type="button" className="button quiet" onClick={() => setUndone(entry)}>
                  {say('That was a slip')}
                </button>
              </li>
            ))}
        </ul>
      )}
      {undone !== undefined && (
        <UndoSheet order={order} delivery={undone} onClose={() => setUndone(undefined)} />
      )}
      {what === 'bass strings' && order.deliveries.length > 0 && <Received order={order} all={all} />}
      {asked === 'received' && <ReceivedSheet order={order} onClose={() => setAsked(undefined)} />}
      {asked !== undefined && asked !== 'received' && (
        <MoveSheet order={order} to={asked} onClose={() => setAsked(undefined)} />
      )}
    </article>
  );
}

const moveTitles = {
  sent: message('The order was sent'),
  confirmed: message('The order was confirmed'),
  cancelled: message('Cancel the order'),
} as const;

function MoveSheet({
  order,
  to,
  onClose,
}: {
  order: Order;
  to: keyof typeof moveTitles;
  onClose: () => void;
}) {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const [on, setOn] = useState(() => todayHere());
  const [expectedOn, setExpectedOn] = useState('');
  const [note, setNote] = useState('');
  const [problem, setProblem] = useState<string>();
  async function keep(): Promise<void> {
    const done = await desk.run((context) =>
      moveOrder(context, order.journal, {
        order: order.id,
        to,
        on,
        ...(expectedOn === '' ? {} : { expectedOn }),
        ...(note.trim() === '' ? {} : { note: note.trim() }),
      }),
    );
    if (done === undefined) setProblem(desk.problem.get());
    else onClose();
  }
  return (
    <FormSheet
      title={say(moveTitles[to])}
      keep={say('Keep it')}
      canKeep={on !== ''}
      problem={problem}
      onKeep={keep}
      onClose={onClose}
    >
      <DayField label={say('On')} value={on} onChange={setOn} />
      {to !== 'cancelled' && (
        <DayField label={say('Expected here on')} value={expectedOn} onChange={setExpectedOn} />
      )}
      <TextField label={say('[a remark] Note')} value={note} onChange={setNote} maxLength={1000} />
    </FormSheet>
  );
}

function UndoSheet({ order, delivery, onClose }: { order: Order; delivery: Ulid; onClose: () => void }) {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string>();
  async function keep(): Promise<void> {
    const done = await desk.run((context) =>
      undoDelivery(context, order.journal, { order: order.id, delivery, reason }),
    );
    if (done === undefined) setProblem(desk.problem.get());
    else onClose();
  }
  return (
    <FormSheet
      title={say('Take this delivery back')}
      keep={say('Take it back')}
      canKeep={reason.trim() !== ''}
      problem={problem}
      onKeep={keep}
      onClose={onClose}
    >
      <p>
        {say(
          'What went on the shelf with it is taken off again. Both stay in the journals, with the reason.',
        )}
      </p>
      <TextField label={say('Why')} value={reason} onChange={setReason} />
    </FormSheet>
  );
}

function ReceivedSheet({ order, onClose }: { order: Order; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const [on, setOn] = useState(() => todayHere());
  const [typed, setTyped] = useState<TypedCounts>({});
  const [problem, setProblem] = useState<string>();
  const open = order.lines.filter(({ outstanding }) => outstanding > 0);
  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const delivery = deliveryOf(order, typed, on, language);
      const done = await desk.run((context) => receiveGoods(context, order.journal, delivery));
      if (done === undefined) setProblem(desk.problem.get());
      else onClose();
    } catch (error) {
      setProblem(sentenceOf(error, language));
    }
  }
  return (
    <FormSheet
      title={say('Goods received from {supplier}', { supplier: order.supplier })}
      keep={say('It is here')}
      canKeep={on !== ''}
      problem={problem}
      more={
        <button
          type="button"
          className="button"
          onClick={() => setTyped(Object.fromEntries(open.map(({ line }) => [line, '0'])))}
        >
          {say('None of these yet')}
        </button>
      }
      onKeep={keep}
      onClose={onClose}
    >
      <DayField label={say('On')} value={on} onChange={setOn} />
      {open.map(({ line, what, unit, outstanding }) =>
        // Of one there is, it came or it did not.
        outstanding === 1 ? (
          <label key={line} className="order-check">
            <input
              type="checkbox"
              checked={typed[line] !== '0'}
              onChange={(event) => setTyped({ ...typed, [line]: event.target.checked ? '1' : '0' })}
            />
            <span>
              {what}, {unit}
            </span>
          </label>
        ) : (
          <TextField
            key={line}
            label={`${what}, ${unit}`}
            hint={say('{outstanding} still to come', { outstanding })}
            value={typed[line] ?? String(outstanding)}
            onChange={(value) => setTyped({ ...typed, [line]: value })}
            isNumber
            maxLength={10}
          />
        ),
      )}
    </FormSheet>
  );
}
