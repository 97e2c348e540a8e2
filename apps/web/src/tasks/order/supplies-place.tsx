import { noteName } from '@becket/core';
import type { Order, StockUnit } from '@becket/journal';
import {
  allowancesInWords,
  type Cover,
  coverFromStock,
  draftSupplyOrder,
  purchaseList,
  quantityWords,
  reserveForJob,
  type SupplierPurchase,
  type Supplies,
  type SupplyGroup,
  type SupplyLine,
  supplyGroups,
  takeReserved,
} from '@becket/tasks';
import { useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useMedia } from '../../desk/use-media.ts';
import { useShop } from '../../desk/use-shop.ts';
import { Papers } from '../../piano/papers.tsx';
import { DayField } from './day-field.tsx';
import { draftTo, priceText } from './order-words.ts';
import { useOrders, useSupplies } from './use-supplies.ts';

/** What the job needs, what the shelf covers, and what is to be bought from whom. */
export function SuppliesPlace() {
  const { job } = useDesk();
  const answer = useSupplies();
  const hasWound = [...job.unisons.values()].some(({ winding }) => winding === 'wound');
  return (
    <>
      {answer === undefined ? (
        <p role="status">Counting what the job needs …</p>
      ) : answer.supplies === undefined ? (
        <p role="alert" className="notice bad">
          ▲ {answer.problem}
        </p>
      ) : (
        <Needed supplies={answer.supplies} />
      )}
      <Papers
        offers={[
          { paper: 'purchase-list', words: 'Purchase list' },
          ...(hasWound ? [{ paper: 'bass-string-order', words: 'Bass string order' } as const] : []),
          { paper: 'as-found-record', words: 'As-found record' },
          ...(job.damages.length > 0 ? [{ paper: 'change-order', words: 'Change order' } as const] : []),
        ]}
      />
    </>
  );
}

function Needed({ supplies }: { supplies: Supplies }) {
  const { desk } = useDesk();
  const shop = useShop();
  const orders = useOrders();
  const all = useMemo(() => [...orders.orders, ...shop.orders.orders], [orders, shop]);
  const covers = supplies.lines.map((line) => ({
    line,
    cover: coverFromStock(line, shop.stock, desk.id, all),
  }));
  const couldReserve = covers.some(({ cover }) => cover.covered > cover.mine);
  return (
    <>
      <section aria-labelledby="needed">
        <h2 id="needed">What the job needs</h2>
        <p className="notice">
          {supplies.isChosenScale ? '● ' : '▲ '}
          Counted from {supplies.scale}.
          {!supplies.isChosenScale && (
            <>
              {' '}
              Sizes are those that the old wire speaks for.{' '}
              <a href={hashOf({ place: 'job', job: desk.id, task: 'scale' })}>Choose the scale first</a>, then
              buy wire.
            </>
          )}
        </p>
        {supplies.scaleProblem !== undefined && (
          <p role="alert" className="notice bad">
            ▲ {supplies.scaleProblem}
          </p>
        )}
        {supplies.notCounted.map((sentence) => (
          <p key={sentence} className="notice">
            ▲ {sentence}
          </p>
        ))}
        {supplyGroups.map((group) => (
          <Group key={group} group={group} covers={covers.filter(({ line }) => line.group === group)} />
        ))}
        <details name="supplies" className="order-card">
          <summary>What is added to what is strung</summary>
          <ul>
            {allowancesInWords(supplies.policy).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p>
            <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'stock' })}>
              Change these figures under Suppliers and stock.
            </a>
          </p>
        </details>
        <div className="button-row">
          <button
            type="button"
            className="button"
            disabled={!couldReserve}
            onClick={() =>
              void desk.run((context, id) =>
                reserveForJob(
                  context,
                  id,
                  covers.map(({ line }) => line),
                ),
              )
            }
          >
            Set aside what the shelf has
          </button>
        </div>
      </section>
      <Purchase supplies={supplies} orders={all} />
    </>
  );
}

interface Covered {
  readonly line: SupplyLine;
  readonly cover: Cover;
}

/** One group of supplies: its sums in the head, its lines inside. One is open at a time. */
function Group({ group, covers }: { group: SupplyGroup; covers: readonly Covered[] }) {
  // On a phone the heads are the page; on a wider screen the first group can stand open.
  const isPhone = useMedia('(max-width: 599px)');
  if (covers.length === 0) return null;
  const unknown = covers.filter(({ line }) => line.total === undefined).length;
  const toBuy = covers.filter(({ cover }) => cover.toBuy !== 0).length;
  return (
    <details name="supplies" className="order-card supply-group" open={!isPhone && group === 'plain wire'}>
      <summary>
        <h3>{group.charAt(0).toUpperCase() + group.slice(1)}</h3>
        <span className="supply-sums">
          {[
            sumsOf(covers),
            ...(unknown > 0 ? [`▲ ${unknown} unknown`] : []),
            toBuy === 0 ? '● covered' : `${toBuy} of ${covers.length} to buy`,
          ]
            .filter((words) => words !== '')
            .join(' · ')}
        </span>
      </summary>
      <ul className="order-lines">
        {covers.map(({ line, cover }) => (
          <NeededLine key={line.id} line={line} cover={cover} />
        ))}
      </ul>
    </details>
  );
}

/** '1.52 kg', '239 pieces, 2 sets': what a group comes to, unit by unit. */
function sumsOf(covers: readonly Covered[]): string {
  const sums = new Map<StockUnit, number>();
  for (const { line } of covers)
    if (line.total !== undefined) sums.set(line.unit, (sums.get(line.unit) ?? 0) + line.total);
  return [...sums].map(([unit, sum]) => quantityWords(sum, unit)).join(', ');
}

function NeededLine({ line, cover }: { line: SupplyLine; cover: Cover }) {
  const { desk } = useDesk();
  const { item, unit, total } = line;
  const words = (quantity: number) => quantityWords(quantity, unit);
  return (
    <li className="order-line">
      <strong>{line.what}</strong>
      <dl className="order-figures">
        <div>
          <dt>needed</dt>
          <dd>{total === undefined ? <span className="warn">unknown</span> : words(total)}</dd>
        </div>
        {item !== undefined && (
          <div>
            <dt>on the shelf</dt>
            <dd>{cover.onHand === undefined ? 'not counted' : words(cover.onHand)}</dd>
          </div>
        )}
        {cover.mine > 0 && (
          <div>
            <dt>set aside</dt>
            <dd>{words(cover.mine)}</dd>
          </div>
        )}
        {cover.onOrder > 0 && (
          <div>
            <dt>on order</dt>
            <dd>{words(cover.onOrder)}</dd>
          </div>
        )}
        {cover.toBuy !== undefined && (
          <div>
            <dt>to buy</dt>
            <dd>
              <strong>{cover.toBuy === 0 ? 'nothing' : words(cover.toBuy)}</strong>
            </dd>
          </div>
        )}
      </dl>
      <details>
        <summary>How it is counted</summary>
        <p>
          {line.needed === undefined ? '' : `${words(line.needed)}: `}
          {line.because}.
        </p>
        {line.extra.length > 0 && (
          <p>And {line.extra.map(({ name, quantity }) => `${words(quantity)} ${name}`).join(', ')}.</p>
        )}
        {line.assumed.map((sentence) => (
          <p key={sentence}>▲ {sentence}</p>
        ))}
        <p>{tracedTo(line)}</p>
      </details>
      {item !== undefined && cover.mine > 0 && (
        <button
          type="button"
          className="button quiet"
          onClick={() => void desk.run((context, id) => takeReserved(context, id, item))}
        >
          Taken from the shelf
        </button>
      )}
    </li>
  );
}

/** 'From 18 strings, C4 to A4, and 54 entries of the journal.' */
function tracedTo({ from }: SupplyLine): string {
  const keys = from.flatMap(({ key }) => key ?? []);
  const entries = new Set(from.flatMap((one) => one.entries)).size;
  if (from.length === 0) return 'Not counted from readings.';
  if (keys.length === 0) return `From ${entries} ${entries === 1 ? 'entry' : 'entries'} of the record.`;
  const [low, high] = [noteName(Math.min(...keys)), noteName(Math.max(...keys))];
  return `From ${from.length} ${from.length === 1 ? 'string or pin' : 'strings or pins'}, ${low === high ? low : `${low} to ${high}`}, by ${entries} entries of the journal.`;
}

function Purchase({ supplies, orders }: { supplies: Supplies; orders: readonly Order[] }) {
  const { desk } = useDesk();
  const shop = useShop();
  // The day that was said last holds until another is said.
  const [neededOn, setNeededOn] = useState(
    () => orders.findLast((order) => order.neededOn !== undefined)?.neededOn ?? '',
  );
  const day = neededOn === '' ? undefined : neededOn;
  const list = purchaseList({ supplies, stock: shop.stock, job: desk.id, orders, neededOn: day });
  return (
    <section aria-labelledby="purchase">
      <h2 id="purchase">What to buy</h2>
      {shop.stock.priceLists.length === 0 ? (
        <p>
          No price list is kept yet.{' '}
          <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'stock' })}>
            Bring one in under Suppliers and stock.
          </a>
        </p>
      ) : (
        <DayField
          label="Needed on"
          hint="Days to order by follow from the suppliers' lead times."
          value={neededOn}
          onChange={setNeededOn}
        />
      )}
      {list.suppliers.map((purchase) => (
        <SupplierCard
          key={purchase.supplier}
          purchase={purchase}
          neededOn={day}
          draft={draftTo(
            purchase.supplier,
            orders.filter(({ journal }) => journal === desk.id),
          )}
        />
      ))}
      {list.notListed.length > 0 && shop.stock.priceLists.length > 0 && (
        <details className="order-card">
          <summary>{list.notListed.length} to buy that stand in no price list</summary>
          <ul>
            {list.notListed.map(({ line, cover }) => (
              <li key={line.id}>
                {line.what}
                {cover.toBuy !== undefined && `: ${quantityWords(cover.toBuy, line.unit)}`}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function SupplierCard({
  purchase,
  neededOn,
  draft,
}: {
  purchase: SupplierPurchase;
  neededOn: string | undefined;
  draft: Order | undefined;
}) {
  const { desk } = useDesk();
  const { supplier, currency, lines, total, orderBy } = purchase;
  return (
    <section className="order-card" aria-label={`To buy from ${supplier}`}>
      <h3>{supplier}</h3>
      <ul className="order-buy">
        {lines.map(({ line, article, packs, packWords, total: price, remark, orderBy: by }) => (
          <li key={line.id}>
            <span>
              {packs} × {packWords}: {line.what} <span className="soft">({article})</span>
              {by !== undefined && <span className="soft"> order by {by}</span>}
              {remark !== undefined && <span className="soft"> {remark}</span>}
            </span>
            <span className="number">{priceText(price, currency)}</span>
          </li>
        ))}
      </ul>
      <p className="order-total">
        <strong>{priceText(total, currency)}</strong>
        {orderBy !== undefined && <> · order by {orderBy}</>}
      </p>
      {draft !== undefined && (
        <p>
          ▲ A draft of {draft.draftedAt.slice(0, 10)} stands under{' '}
          <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'orders' })}>Orders</a>. Send it
          or cancel it before another is written.
        </p>
      )}
      <button
        type="button"
        className="button"
        disabled={draft !== undefined}
        onClick={() =>
          void desk.run((context, id) =>
            draftSupplyOrder(context, id, { purchase, ...(neededOn === undefined ? {} : { neededOn }) }),
          )
        }
      >
        Draft the order to {supplier}
      </button>
    </section>
  );
}
