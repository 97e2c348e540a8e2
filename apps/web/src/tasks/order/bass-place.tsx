import { type Message, message } from '@becket/core';
import { type BassOrder, type BassQuantity, bassOrder, changedSinceOrder } from '@becket/journal';
import { bassAllowancesOf, draftBassOrder, signBassChecks } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useShop } from '../../desk/use-shop.ts';
import { DayField } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, lengthNumber } from '../../parts/length-text.ts';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { AllowanceCard } from './allowances-part.tsx';
import { type CheckGroup, checkGroups } from './check-groups.ts';
import { bassDraft } from './order-words.ts';
import { useOrders } from './use-supplies.ts';

const columns: readonly { readonly quantity: BassQuantity; readonly short: Message }[] = [
  { quantity: 'core-diameter', short: message('core') },
  { quantity: 'inner-layer-diameter', short: message('inner layer') },
  { quantity: 'over-all-diameter', short: message('over all') },
  { quantity: 'speaking-length', short: message('speaking') },
  { quantity: 'bare-front', short: message('bare front') },
  { quantity: 'bare-back', short: message('bare bridge') },
  { quantity: 'loop-to-winding', short: message('loop to winding') },
  { quantity: 'winding-length', short: message('winding') },
  { quantity: 'loop-to-termination', short: message('loop to front') },
];

/** The bass set: what is ordered string by string, and what stands between it and an order. */
export function BassPlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const { signed, orders } = useOrders();
  const shop = useShop();
  const order = useMemo(
    () =>
      bassOrder(job, { signed, allowances: bassAllowancesOf(shop.allowances), lengthUnit: unit }, language),
    [job, signed, shop, unit, language],
  );
  const toRecord = hashOf({ place: 'job', job: desk.id, task: 'record' });
  const changed = orders
    .filter(({ what, state }) => what === 'bass strings' && state !== 'cancelled')
    .flatMap((one) => changedSinceOrder(order, one, language) ?? []);
  if (order.strings.length === 0)
    return (
      <section aria-labelledby="bass-order">
        <h2 id="bass-order">{say('Bass strings')}</h2>
        <p>
          {sayNodes('No wound string is described yet. {link}', {
            link: <a href={toRecord}>{say('Describe the stringing in Record.')}</a>,
          })}
        </p>
      </section>
    );
  return (
    <>
      <section aria-labelledby="bass-order">
        <h2 id="bass-order">{say('Bass strings')}</h2>
        <p className="notice">
          {say('{sign} {strings} wound strings, made from {scale}.', {
            sign: order.mayBeSent ? '●' : '▲',
            strings: order.strings.length,
            scale: order.scale,
          })}{' '}
          {order.mayBeSent
            ? say('Every check passes or is signed.')
            : say('A set made from guesses cannot be sent back: settle the checks below first.')}
          {job.seal === undefined && <> {say('The as-found record is not sealed; the paper says so.')}</>}
        </p>
        {[order.scaleProblem, ...changed].map((sentence) =>
          sentence === undefined ? null : <Problem key={sentence} says={sentence} />,
        )}
        <p className="soft digest">{say('Digest of these strings: {digest}', { digest: order.digest })}</p>
      </section>
      <Checks order={order} />
      <Draft order={order} />
      <Strings order={order} unit={unit} toRecord={toRecord} />
      <section aria-labelledby="bass-allowances">
        <h3 id="bass-allowances">{say('What is added, and what may differ')}</h3>
        <p>
          {say(
            'Nothing is added to a length from loop to termination. These figures are the shop’s and hold for every job; the order states them.',
          )}
        </p>
        <AllowanceCard group="bass" />
      </section>
    </>
  );
}

function Checks({ order }: { order: BassOrder }) {
  const language = useLanguage();
  const { localDay, say } = language;
  const { desk } = useDesk();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [name, setName] = useState('');
  const [reason, setReason] = useState('');
  const open = order.checks.filter(({ signed }) => signed === undefined);
  const signed = order.checks.filter((check) => check.signed !== undefined);
  const groups = checkGroups(open, language);
  const picked = open.filter(({ id }) => chosen.has(id));
  if (order.checks.length === 0) return null;

  function toggle({ checks }: CheckGroup): void {
    const next = new Set(chosen);
    const isChosen = checks.every(({ id }) => chosen.has(id));
    for (const { id } of checks) {
      if (isChosen) next.delete(id);
      else next.add(id);
    }
    setChosen(next);
  }
  async function sign(): Promise<void> {
    const done = await desk.run((context, job) =>
      signBassChecks(context, job, { checks: picked.map(({ id }) => id), name, reason }),
    );
    if (done === undefined) return;
    setChosen(new Set());
    setReason('');
  }
  return (
    <section aria-labelledby="bass-checks">
      <h3 id="bass-checks">{say('Checks')}</h3>
      {open.length > 0 && (
        <form onSubmit={once(sign)} aria-label={say('Sign checks')}>
          <p>
            {say(
              '{open} {open, plural, one {check does} other {checks do}} not pass. Measure again, or tick what you answer for and sign it by name.',
              { open: open.length },
            )}
          </p>
          <div className="button-row">
            <button
              type="button"
              className="button quiet"
              onClick={() =>
                setChosen(new Set(picked.length === open.length ? [] : open.map(({ id }) => id)))
              }
            >
              {picked.length === open.length ? say('Tick none') : say('Tick all')}
            </button>
          </div>
          <ul className="order-lines">
            {groups.map((group) => (
              <li key={group.id} className="order-line">
                <label className="order-check">
                  <input
                    type="checkbox"
                    checked={group.checks.every(({ id }) => chosen.has(id))}
                    onChange={() => toggle(group)}
                  />
                  <span>{group.sentence}</span>
                </label>
              </li>
            ))}
          </ul>
          <div className="order-form">
            <TextField label={say('Who answers for it')} value={name} onChange={setName} maxLength={200} />
            <TextField label={say('Why it is right all the same')} value={reason} onChange={setReason} />
          </div>
          <div className="button-row">
            <button
              type="submit"
              className="button strong"
              disabled={picked.length === 0 || name.trim() === '' || reason.trim() === ''}
            >
              {say('Sign {picked} {picked, plural, one {check} other {checks}}', { picked: picked.length })}
            </button>
          </div>
        </form>
      )}
      {signed.length > 0 && (
        <details className="order-card">
          <summary>
            {say('{signed} signed {signed, plural, one {check} other {checks}}', { signed: signed.length })}
          </summary>
          <ul>
            {signed.map((check) => (
              <li key={check.id}>
                {check.sentence}{' '}
                <span className="soft">
                  {check.signed?.name}, {check.signed && localDay(check.signed.at)}: {check.signed?.reason}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function Draft({ order }: { order: BassOrder }) {
  const { localDay, say, sayNodes } = useLanguage();
  const { desk } = useDesk();
  const shop = useShop();
  const standing = bassDraft(useOrders().orders);
  const [supplier, setSupplier] = useState('');
  const [neededOn, setNeededOn] = useState('');
  const [said, setSaid] = useState('');

  async function draft(): Promise<void> {
    setSaid('');
    const done = await desk.run((context, job) =>
      draftBassOrder(context, job, { supplier, ...(neededOn === '' ? {} : { neededOn }) }),
    );
    if (done !== undefined)
      setSaid(say('The order is drafted. Print it under Papers, send it, and say so under Orders.'));
  }
  return (
    <section aria-labelledby="bass-draft">
      <h3 id="bass-draft">{say('Draft the order')}</h3>
      <form onSubmit={once(draft)}>
        <div className="order-form">
          <TextField
            label={say('Who makes the strings')}
            value={supplier}
            onChange={setSupplier}
            maxLength={120}
            words={shop.stock.suppliers.map((one) => one.supplier)}
          />
          <DayField label={say('Needed on')} value={neededOn} onChange={setNeededOn} />
        </div>
        {standing !== undefined && (
          <p>
            {sayNodes(
              '▲ A draft of {day} stands under {link}. Send it or cancel it before another is written.',
              {
                day: localDay(standing.draftedAt),
                link: (
                  <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'orders' })}>
                    {say('Orders')}
                  </a>
                ),
              },
            )}
          </p>
        )}
        <div className="button-row">
          <button
            type="submit"
            className="button"
            disabled={!order.mayBeSent || supplier.trim() === '' || standing !== undefined}
          >
            {say('Draft the bass string order')}
          </button>
          <output aria-live="polite">{said}</output>
        </div>
      </form>
    </section>
  );
}

function Strings({ order, unit, toRecord }: { order: BassOrder; unit: LengthUnit; toRecord: string }) {
  const language = useLanguage();
  const { say } = language;
  const [, select] = useSelectedKey();
  const shown = columns.filter(
    ({ quantity }) => quantity !== 'inner-layer-diameter' || order.strings.some(({ layers }) => layers === 2),
  );
  return (
    <section aria-labelledby="bass-strings">
      <h3 id="bass-strings">{say('String by string')}</h3>
      <TableFrame label={say('Wound strings')}>
        <table className="table">
          <caption>
            {say(
              'In {unit, select, mm {millimetres} other {inches}}; ° is worked out from other readings. The paper has both units, tension and ends.',
              { unit },
            )}
          </caption>
          <TableHeads
            heads={[say('string'), ...shown.map(({ short }) => figures(say(short))), say('loop')]}
          />
          <tbody>
            {order.strings.map((string) => (
              <tr key={`${string.key}/${string.string}`}>
                <th scope="row" className="order-string">
                  <a href={toRecord} onClick={() => select(string.key)}>
                    {string.note} {string.side === 'single' ? '' : say(string.side)}
                  </a>
                </th>
                {shown.map(({ quantity }) => {
                  const stated = string.stated[quantity];
                  return (
                    <td key={quantity} className="number">
                      {stated.is === 'length' ? (
                        `${lengthNumber(stated.value, unit, quantity.endsWith('-diameter') ? 'diameter' : 'length', language)}${stated.from === 'worked out' ? '°' : ''}`
                      ) : stated.why === 'does not apply' || stated.why === 'none' ? (
                        <span className="soft">{stated.why === 'none' ? say('none') : '–'}</span>
                      ) : (
                        <span className="warn">{say(stated.why)}</span>
                      )}
                    </td>
                  );
                })}
                <td>{say(string.loopStyle)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </section>
  );
}
