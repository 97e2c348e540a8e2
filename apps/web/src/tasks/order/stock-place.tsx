import { currencyOf, type Message, message, sayKnown } from '@becket/core';
import { SHOP_JOURNAL, type StockLine, type Ulid } from '@becket/journal';
import {
  draftSupplyOrder,
  itemWords,
  keepPriceList,
  noteStock,
  priceListColumns,
  priceListExample,
  purchaseForShelf,
  quantityWords,
  releaseReservation,
  reorderList,
  shortagesOf,
  withdrawStockMove,
} from '@becket/tasks';
import { type FormEvent, useId, useState } from 'react';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useShop } from '../../desk/use-shop.ts';
import { entryForm } from '../../parts/entry-form.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { saveFile } from '../../parts/save-file.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { readTypedNumber } from '../../parts/typed-number.ts';
import { Allowances } from './allowances-part.tsx';
import { draftTo } from './order-words.ts';
import { newStockForm, type StockForm, stockActions, stockKinds, stockMoveOf } from './stock-form.ts';
import { useOrders } from './use-supplies.ts';

/** The shop behind the job: what lies on its shelves and from whom it buys. The same for every job. */
export function StockPlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const shop = useShop();
  const { orders } = useOrders();
  const shortages = shortagesOf(shop.stock, language);
  const all = [...orders, ...shop.orders.orders];
  const reorder = reorderList(shop.stock, all, language);
  const { suppliers } = purchaseForShelf(shop.stock, all, undefined, language);
  return (
    <>
      <section aria-labelledby="stock">
        <h2 id="stock">{say('Stock of the shop')}</h2>
        <p>{say("What stands here is the shop's and the same in every job.")}</p>
        {shortages.map(({ sentence, line }) => (
          <p key={line.id} className="notice bad">
            ▲ {sentence}
          </p>
        ))}
        {reorder.length > 0 && (
          <div className="notice">
            <p>
              <strong>{say('To buy again for the shelf')}</strong>
            </p>
            <ul>
              {reorder.map(({ line, quantity, because }) => (
                <li key={line.id}>
                  {say('{quantity} of {item}: {because}.', {
                    quantity: quantityWords(quantity, line.unit, language),
                    item: itemWords(line.item, language),
                    because,
                  })}
                </li>
              ))}
            </ul>
            {suppliers.map((purchase) => (
              <button
                key={purchase.supplier}
                type="button"
                className="button"
                disabled={draftTo(purchase.supplier, shop.orders.orders) !== undefined}
                onClick={once(() =>
                  desk.run((context) => draftSupplyOrder(context, SHOP_JOURNAL, { purchase })),
                )}
              >
                {say('Draft the order to {supplier}', { supplier: purchase.supplier })}
              </button>
            ))}
          </div>
        )}
        {shop.stock.lines.length === 0 ? (
          <p>{say('Nothing is counted yet. Count what is on the shelf, and jobs are covered from it.')}</p>
        ) : (
          <ul className="order-lines">
            {shop.stock.lines.map((line) => (
              <ShelfLine key={line.id} line={line} />
            ))}
          </ul>
        )}
      </section>
      <CountForm />
      <Suppliers />
      <Allowances />
    </>
  );
}

function ShelfLine({ line }: { line: StockLine }) {
  const language = useLanguage();
  const { localDay, say } = language;
  const { desk } = useDesk();
  const words = (quantity: number) => quantityWords(quantity, line.unit, language);
  return (
    <li className="order-line">
      <strong>{itemWords(line.item, language)}</strong>
      <dl className="order-figures">
        <div>
          <dt>{say('on hand')}</dt>
          <dd>{line.onHand === undefined ? say('not counted') : words(line.onHand)}</dd>
        </div>
        <div>
          <dt>{say('set aside')}</dt>
          <dd>{words(line.reserved)}</dd>
        </div>
        <div>
          <dt>{say('free')}</dt>
          <dd>
            {line.free === undefined ? (
              say('not known')
            ) : line.free < 0 ? (
              <span className="warn">▲ {words(line.free)}</span>
            ) : (
              words(line.free)
            )}
          </dd>
        </div>
        <div>
          <dt>{say('keep at least')}</dt>
          <dd>{line.minimum === 0 ? say('no minimum') : words(line.minimum)}</dd>
        </div>
      </dl>
      {line.counted !== undefined && (
        <span className="soft">
          {say('Counted {day} by {by}.', { day: localDay(line.counted.at), by: line.counted.by })}
        </span>
      )}
      {line.reservations.length > 0 && (
        <ul>
          {line.reservations.map((one) => (
            <li key={one.entry}>
              {say('{quantity} for {job} ({by}, {day})', {
                quantity: words(one.open),
                job: sayKnown(one.jobTitle, language),
                by: one.by,
                day: localDay(one.at),
              })}{' '}
              <button
                type="button"
                className="button quiet"
                onClick={once(() =>
                  desk.run((context) =>
                    releaseReservation(context, one.entry, 'released by hand in the stock'),
                  ),
                )}
              >
                {say('Release')}
              </button>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

const actionWords: Readonly<Record<StockForm['action'], Message>> = {
  counted: message('counted on the shelf'),
  'came in': message('came in'),
  used: message('was used'),
  'keep at least': message('keep at least'),
};

function CountForm() {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { unit } = useSettings();
  const [entry] = useState(() => entryForm(newStockForm));
  const { form, problem } = useObservable(entry.state);
  const [said, setSaid] = useState('');
  const [last, setLast] = useState<Ulid>();
  const set = entry.take;

  function keep(event: FormEvent): void {
    event.preventDefault();
    setSaid('');
    void entry.keep((typed) => {
      const move = stockMoveOf(typed, unit, language);
      return { next: { ...typed, quantity: '' }, kept: note(move) };
    });
  }
  async function note(move: ReturnType<typeof stockMoveOf>): Promise<void> {
    const done = await desk.runHere((context) => noteStock(context, [move]));
    setSaid(say('Noted: {item}.', { item: itemWords(move.item, language) }));
    setLast(done.entries.at(-1)?.id);
  }
  async function undo(move: Ulid): Promise<void> {
    const done = await desk.run((context) => withdrawStockMove(context, move, 'undone at once'));
    if (done === undefined) return;
    setLast(undefined);
    setSaid(say('It is taken back.'));
  }
  const unitWords = (one: StockForm['unit']) => (one === 'piece' || one === 'set' ? say(one) : one);
  const quantityUnit =
    form.kind === 'wire' ? say('grams') : form.kind === 'tuning pin' ? say('pieces') : unitWords(form.unit);
  return (
    <section aria-labelledby="count">
      <h3 id="count">{say('Count, receive or use')}</h3>
      <form onSubmit={keep} aria-label={say('Note a stock movement')}>
        <div className="order-form">
          <SelectField
            label={say('What happened')}
            value={form.action}
            onChange={(action) => set({ action })}
            options={stockActions.map((value) => ({ value, words: say(actionWords[value]) }))}
          />
          <SelectField
            label={say('Kind')}
            value={form.kind}
            onChange={(kind) => set({ kind })}
            options={stockKinds.map((value) => ({ value, words: say(value) }))}
          />
          {form.kind === 'other' ? (
            <>
              <TextField
                label={say('What it is called')}
                value={form.name}
                onChange={(name) => set({ name })}
                maxLength={120}
              />
              <SelectField
                label={say('Counted in')}
                value={form.unit}
                onChange={(next) => set({ unit: next })}
                options={(['piece', 'set', 'mm', 'g'] as const).map((value) => ({
                  value,
                  words: unitWords(value),
                }))}
              />
            </>
          ) : (
            <TextField
              label={say('Diameter, {unit}', { unit })}
              value={form.diameter}
              onChange={(diameter) => set({ diameter })}
              maxLength={30}
              isNumber
            />
          )}
          {form.kind === 'tuning pin' && (
            <TextField
              label={say('Length, {unit}', { unit })}
              hint={say('May be left out.')}
              value={form.pinLength}
              onChange={(pinLength) => set({ pinLength })}
              maxLength={30}
              isNumber
            />
          )}
          <TextField
            label={say('How much, {unit}', { unit: quantityUnit })}
            value={form.quantity}
            onChange={(quantity) => set({ quantity })}
            maxLength={12}
            isNumber
          />
        </div>
        {problem !== undefined && (
          <p role="alert" className="warn">
            ▲ {problem}
          </p>
        )}
        <div className="button-row">
          <button type="submit" className="button">
            {say('Note it')}
          </button>
          {last !== undefined && (
            <button type="button" className="button quiet" onClick={once(() => undo(last))}>
              {say('Undo')}
            </button>
          )}
          <output aria-live="polite">{said}</output>
        </div>
      </form>
    </section>
  );
}

function Suppliers() {
  const language = useLanguage();
  const { localDay, say } = language;
  const { desk } = useDesk();
  const { stock } = useShop();
  const fileId = useId();
  const [supplier, setSupplier] = useState('');
  const [currency, setCurrency] = useState(stock.priceLists[0]?.currency ?? currencyOf(language.locale));
  const [lead, setLead] = useState('');
  const [said, setSaid] = useState('');
  const [problem, setProblem] = useState<string>();

  async function bring(file: File | undefined): Promise<void> {
    setSaid('');
    setProblem(undefined);
    if (file === undefined) return;
    try {
      const days = readTypedNumber(lead, language);
      if (
        days.is === 'problem' ||
        (days.is === 'number' && (!Number.isInteger(days.value) || days.value < 0))
      )
        throw new RangeError(
          say(
            "Cannot keep this price list: a lead time of whole days is needed, '{found}' was found. Correct it, or leave it empty.",
            { found: lead.trim() },
          ),
        );
      const bytes = new Uint8Array(await file.arrayBuffer());
      // Asked here and not through the desk, so that the sentence stands beside the file.
      const kept = await desk.run((context) =>
        keepPriceList(context, {
          supplier,
          currency: currency.trim().toUpperCase(),
          ...(days.is === 'number' ? { leadTime_days: days.value } : {}),
          bytes,
          fileName: file.name,
        }),
      );
      if (kept === undefined) {
        setProblem(desk.problem.get());
        return;
      }
      const lines = kept.stock.priceLists.find((one) => one.supplier === supplier.trim())?.lines.length ?? 0;
      setSaid(say('{lines} articles of {supplier} are kept.', { lines, supplier: supplier.trim() }));
    } catch (error) {
      setProblem(sentenceOf(error, language));
    }
  }
  return (
    <section aria-labelledby="suppliers">
      <h2 id="suppliers">{say('Suppliers')}</h2>
      {stock.priceLists.length === 0 ? (
        <p>{say('No price list is kept yet.')}</p>
      ) : (
        <ul>
          {stock.priceLists.map((list) => {
            const days = stock.suppliers.find((one) => one.supplier === list.supplier)?.leadTime_days;
            return (
              <li key={list.supplier}>
                {say(
                  '{supplier}: {lines} articles in {currency}, kept {day} from {file}; {lead, select, none {lead time not said} other {lead time {lead} {days, plural, one {day} other {days}}}}',
                  {
                    supplier: list.supplier,
                    lines: list.lines.length,
                    currency: list.currency,
                    day: localDay(list.at),
                    file: list.file,
                    lead: String(days ?? 'none'),
                    days: days ?? 0,
                  },
                )}
              </li>
            );
          })}
        </ul>
      )}
      <h3>{say('Bring in a price list')}</h3>
      <p>
        {say("A table as CSV with the columns {columns}. It stands in place of the supplier's list before.", {
          columns: priceListColumns.join(', '),
        })}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="button quiet"
          onClick={() =>
            saveFile(
              new Blob([priceListExample], { type: 'text/csv' }),
              `${say('[of a file] price-list-example')}.csv`,
            )
          }
        >
          {say('Save an example')}
        </button>
      </div>
      <div className="order-form">
        <TextField
          label={say('Supplier')}
          value={supplier}
          onChange={setSupplier}
          maxLength={120}
          words={stock.suppliers.map((one) => one.supplier)}
        />
        <TextField
          label={say('Currency')}
          hint={say('Three letters, such as EUR.')}
          value={currency}
          onChange={setCurrency}
          maxLength={3}
        />
        <TextField
          label={say('Lead time, days')}
          hint={say('May be left out.')}
          value={lead}
          onChange={setLead}
          maxLength={4}
          isNumber
        />
        <div className="field">
          <label className="field-label" htmlFor={fileId}>
            {say('Price list, CSV')}
          </label>
          <input
            id={fileId}
            className="input"
            type="file"
            accept=".csv,text/csv,text/plain"
            disabled={supplier.trim() === ''}
            onChange={(event) => {
              const { files } = event.target;
              void bring(files?.[0]).finally(() => {
                // So that the same file can be chosen again once it is corrected.
                event.target.value = '';
              });
            }}
          />
          {supplier.trim() === '' && <span className="field-hint">{say('Name the supplier first.')}</span>}
        </div>
      </div>
      {problem !== undefined && (
        <p role="alert" className="warn">
          ▲ {problem}
        </p>
      )}
      <output aria-live="polite">{said}</output>
    </section>
  );
}
