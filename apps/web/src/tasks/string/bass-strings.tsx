import { type Message, message } from '@becket/core';
import { foldOrders } from '@becket/journal';
import {
  type GoingOnState,
  goingOnStates,
  receivedTolerancesOf,
  type StringToGoOn,
  stringsToGoOn,
} from '@becket/tasks';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useShop } from '../../desk/use-shop.ts';
import { useLanguage } from '../../parts/language.tsx';

const heads: Readonly<Record<GoingOnState, Message>> = {
  differs: message('▲ Differs from the order: do not string'),
  'not measured': message('○ Here, not measured yet: do not string'),
  'not here': message('○ Not here yet'),
  'taken by name': message('◆ Differs, and taken by name: may go on'),
  'may go on': message('● As ordered: may go on'),
};

/** The ordered bass strings, each with whether it may go on; nothing when the piano has no wound string. */
export function BassStrings() {
  const { desk, job, entries } = useDesk();
  const { allowances } = useShop();
  const language = useLanguage();
  const { say, sayNodes } = language;
  const strings = useMemo(
    () => stringsToGoOn(foldOrders(entries), receivedTolerancesOf(allowances), language),
    [entries, allowances, language],
  );
  const hasWound = [...job.unisons.values()].some(({ winding }) => winding === 'wound');
  if (!hasWound && strings.length === 0) return null;
  const ready = strings.filter(({ is }) => is === 'may go on' || is === 'taken by name').length;
  const orders = (
    <a href={hashOf({ place: 'job', job: desk.id, task: 'order', part: 'orders' })}>
      {say('Order › Orders')}
    </a>
  );
  return (
    <section aria-labelledby="bass-strings">
      <h2 id="bass-strings">{say('Bass strings: which may go on')}</h2>
      {strings.length === 0 ? (
        <p>
          {say(
            'No bass set is ordered in this job, so nothing is known here of wound strings that go on. Measure them against the order or the scale before they do.',
          )}
        </p>
      ) : (
        <>
          <p className={ready < strings.length ? 'notice bad' : 'notice'}>
            {ready === strings.length
              ? say('● Every ordered string is here, measured, and as ordered or taken by name.')
              : say('▲ {ready} of {count} ordered strings may go on.', { ready, count: strings.length })}
          </p>
          {goingOnStates.map((state) => (
            <Group key={state} head={say(heads[state])} strings={strings.filter(({ is }) => is === state)} />
          ))}
          <p>{sayNodes('What came and what was measured of it is noted under {orders}.', { orders })}</p>
        </>
      )}
    </section>
  );
}

function Group({ head, strings }: { head: string; strings: readonly StringToGoOn[] }) {
  if (strings.length === 0) return null;
  return (
    <div className="going-on">
      <h3>
        {head} <span className="faint">({strings.length})</span>
      </h3>
      <ul className="going-on-names" aria-label={head}>
        {strings.map(({ key, string, name, says }) => (
          <li key={`${key}/${string}`} className={says.length > 0 ? 'wide' : undefined}>
            <strong>{name}</strong>
            {says.map((sentence) => (
              <span key={sentence}> {sentence}</span>
            ))}
          </li>
        ))}
      </ul>
    </div>
  );
}
