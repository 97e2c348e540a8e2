import { english, type Language, noteName } from '@becket/core';
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
import { DayField } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { Papers } from '../../piano/papers.tsx';
import { draftTo, priceText } from './order-words.ts';
import { useOrders, useSupplies } from './use-supplies.ts';

/** What the job needs, what the shelf covers, and what is to be bought from whom. */
export function SuppliesPlace() {
  const { say } = useLanguage();
  const answer = useSupplies();
  return (
    <>
      {answer === undefined ? (
        <p role="status">{say('Counting what the job needs …')}</p>
      ) : answer.supplies === undefined ? (
        <Problem says={answer.problem} />
      ) : (
        <Needed supplies={answer.supplies} />
      )}
      <Papers offers={[{ paper: 'purchase-list', words: say('Purchase list') }]} />
    </>
  );
}

function Needed({ supplies }: { supplies: Supplies }) {
  const language = useLanguage();
  const { say, sayNodes } = language;
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
        <h2 id="needed">{say('What the job needs')}</h2>
        <p className="notice">
          {say('{sign} Counted from {scale}.', {
            sign: supplies.isChosenScale ? '●' : '▲',
            scale: supplies.scale,
          })}
          {!supplies.isChosenScale && (
            <>
              {' '}
              {sayNodes('Sizes are those that the old wire speaks for. {link}, then buy wire.', {
                link: (
                  <a href={hashOf({ place: 'job', job: desk.id, task: 'scale' })}>
                    {say('Choose the scale first')}
                  </a>
                ),
              })}
            </>
          )}
        </p>
        <Problem says={supplies.scaleProblem} />
        {supplies.notCounted.map((sentence) => (
          <p key={sentence} className="notice">
            ▲ {sentence}
          </p>
        ))}
        {supplyGroups.map((group) => (
          <Group key={group} group={group} covers={covers.filter(({ line }) => line.group === group)} />
        ))}
        <details name="supplies" className="order-card">
          <summary>{say('What is added to what is strung')}</summary>
          <ul>
            {allowancesInWords(supplies.policy, language).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p>
            <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'stock' })}>
              {say('Change these figures under Suppliers and stock.')}
            </a>
          </p>
        </details>
        <div className="button-row">
          <button
            type="button"
            className="button"
            disabled={!couldReserve}
            onClick={once(() =>
              desk.run((context, id) =>
                reserveForJob(
                  context,
                  id,
                  covers.map(({ line }) => line),
                ),
              ),
            )}
          >
            {say('Set aside what the shelf has')}
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
  const language = useLanguage();
  const { say } = language;
  // On a phone the heads are the page; on a wider screen the first group can stand open.
  const isPhone = useMedia('(max-width: 599px)');
  if (covers.length === 0) return null;
  const unknown = covers.filter(({ line }) => line.total === undefined).length;
  const toBuy = covers.filter(({ cover }) => cover.toBuy !== 0).length;
  const head = say(group);
  return (
    <details name="supplies" className="order-card supply-group" open={!isPhone && group === 'plain wire'}>
      <summary>
        <h3>{head.charAt(0).toUpperCase() + head.slice(1)}</h3>
        <span className="supply-sums">
          {[
            sumsOf(covers, language),
            ...(unknown > 0 ? [say('▲ {count} unknown', { count: unknown })] : []),
            toBuy === 0
              ? say('● covered')
              : say('{some} of {all} to buy', { some: toBuy, all: covers.length }),
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
function sumsOf(covers: readonly Covered[], language: Language = english): string {
  const sums = new Map<StockUnit, number>();
  for (const { line } of covers)
    if (line.total !== undefined) sums.set(line.unit, (sums.get(line.unit) ?? 0) + line.total);
  return [...sums].map(([unit, sum]) => quantityWords(sum, unit, language)).join(', ');
}

function NeededLine({ line, cover }: { line: SupplyLine; cover: Cover }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { item, unit, total } = line;
  const words = (quantity: number) => quantityWords(quantity, unit, language);
  return (
    <li className="order-line">
      <strong>{line.what}</strong>
      <dl className="order-figures">
        <div>
          <dt>{say('needed')}</dt>
          <dd>{total === undefined ? <span className="warn">{say('unknown')}</span> : words(total)}</dd>
        </div>
        {item !== undefined && (
          <div>
            <dt>{say('on the shelf')}</dt>
            <dd>{cover.onHand === undefined ? say('not counted') : words(cover.onHand)}</dd>
          </div>
        )}
        {cover.mine > 0 && (
          <div>
            <dt>{say('set aside')}</dt>
            <dd>{words(cover.mine)}</dd>
          </div>
        )}
        {cover.onOrder > 0 && (
          <div>
            <dt>{say('on order')}</dt>
            <dd>{words(cover.onOrder)}</dd>
          </div>
        )}
        {cover.toBuy !== undefined && (
          <div>
            <dt>{say('to buy')}</dt>
            <dd>
              <strong>{cover.toBuy === 0 ? say('nothing') : words(cover.toBuy)}</strong>
            </dd>
          </div>
        )}
      </dl>
      <details>
        <summary>{say('How it is counted')}</summary>
        <p>
          {line.needed === undefined ? '' : `${words(line.needed)}: `}
          {line.because}.
        </p>
        {line.extra.length > 0 && (
          <p>
            {say('And {extras}.', {
              extras: line.extra.map(({ name, quantity }) => `${words(quantity)} ${name}`).join(', '),
            })}
          </p>
        )}
        {line.assumed.map((sentence) => (
          <p key={sentence}>▲ {sentence}</p>
        ))}
        <p>{tracedTo(line, language)}</p>
      </details>
      {item !== undefined && cover.mine > 0 && (
        <button
          type="button"
          className="button quiet"
          onClick={once(() => desk.run((context, id) => takeReserved(context, id, item)))}
        >
          {say('Taken from the shelf')}
        </button>
      )}
    </li>
  );
}

/** 'From 18 strings, C4 to A4, and 54 entries of the journal.' */
function tracedTo({ from }: SupplyLine, { say }: Language = english): string {
  const keys = from.flatMap(({ key }) => key ?? []);
  const entries = new Set(from.flatMap((one) => one.entries)).size;
  if (from.length === 0) return say('Not counted from readings.');
  if (keys.length === 0)
    return say('From {entries} {entries, plural, one {entry} other {entries}} of the record.', { entries });
  const [low, high] = [noteName(Math.min(...keys)), noteName(Math.max(...keys))];
  return say(
    'From {from} {from, plural, one {string or pin} other {strings or pins}}, {notes}, by {entries} entries of the journal.',
    { from: from.length, notes: low === high ? low : say('{low} to {high}', { low, high }), entries },
  );
}

function Purchase({ supplies, orders }: { supplies: Supplies; orders: readonly Order[] }) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk } = useDesk();
  const shop = useShop();
  // The day that was said last holds until another is said.
  const [neededOn, setNeededOn] = useState(
    () => orders.findLast((order) => order.neededOn !== undefined)?.neededOn ?? '',
  );
  const day = neededOn === '' ? undefined : neededOn;
  const list = purchaseList({ supplies, stock: shop.stock, job: desk.id, orders, neededOn: day, language });
  return (
    <section aria-labelledby="purchase">
      <h2 id="purchase">{say('What to buy')}</h2>
      {shop.stock.priceLists.length === 0 ? (
        <p>
          {sayNodes('No price list is kept yet. {link}', {
            link: (
              <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'stock' })}>
                {say('Bring one in under Suppliers and stock.')}
              </a>
            ),
          })}
        </p>
      ) : (
        <DayField
          label={say('Needed on')}
          hint={say("Days to order by follow from the suppliers' lead times.")}
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
          <summary>
            {say('{count} to buy that stand in no price list', { count: list.notListed.length })}
          </summary>
          <ul>
            {list.notListed.map(({ line, cover }) => (
              <li key={line.id}>
                {line.what}
                {cover.toBuy !== undefined && `: ${quantityWords(cover.toBuy, line.unit, language)}`}
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
  const language = useLanguage();
  const { day, localDay, say, sayNodes } = language;
  const { desk } = useDesk();
  const { supplier, currency, lines, total, orderBy } = purchase;
  return (
    <section className="order-card" aria-label={say('To buy from {supplier}', { supplier })}>
      <h3>{supplier}</h3>
      <ul className="order-buy">
        {lines.map(({ line, article, packs, packWords, total: price, remark, orderBy: by }) => (
          <li key={line.id}>
            <span>
              {packs} × {packWords}: {line.what} <span className="soft">({article})</span>
              {by !== undefined && <span className="soft"> {say('order by {day}', { day: day(by) })}</span>}
              {remark !== undefined && <span className="soft"> {remark}</span>}
            </span>
            <span className="number">{priceText(price, currency, language)}</span>
          </li>
        ))}
      </ul>
      <p className="order-total">
        <strong>{priceText(total, currency, language)}</strong>
        {orderBy !== undefined && <> · {say('order by {day}', { day: day(orderBy) })}</>}
      </p>
      {draft !== undefined && (
        <p>
          {sayNodes(
            '▲ A draft of {day} stands under {link}. Send it or cancel it before another is written.',
            {
              day: localDay(draft.draftedAt),
              link: (
                <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'orders' })}>
                  {say('Orders')}
                </a>
              ),
            },
          )}
        </p>
      )}
      <button
        type="button"
        className="button"
        disabled={draft !== undefined}
        onClick={once(() =>
          desk.run((context, id) =>
            draftSupplyOrder(context, id, { purchase, ...(neededOn === undefined ? {} : { neededOn }) }),
          ),
        )}
      >
        {say('Draft the order to {supplier}', { supplier })}
      </button>
    </section>
  );
}
