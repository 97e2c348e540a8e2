import { sayKnown } from '@becket/core';
import { type AllowanceKept, type BassAllowances, bassOrder } from '@becket/journal';
import {
  type AllowanceGroup,
  type AllowanceName,
  allowanceGroups,
  allowanceNames,
  allowances,
  bassAllowancesOf,
  orderPolicyOf,
  quantityWords,
  type Shop,
  type Supplies,
  setAllowance,
  takeBackAllowance,
} from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useShop } from '../../desk/use-shop.ts';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { countSuppliesAway } from '../../worker/supplies-away.ts';
import { allowanceOf, allowanceText, allowanceUnit, bassChange, changedLines } from './allowance-form.ts';
import { useOrders, useSupplies } from './use-supplies.ts';

type KeptFigure = Pick<AllowanceKept, 'value' | 'source'>;

const groupNames = Object.keys(allowanceGroups) as AllowanceGroup[];

/** What the shop buys beyond what is strung, and how far off a delivery may be: figures with where they come from. */
export function Allowances() {
  const { say } = useLanguage();
  return (
    <section aria-labelledby="allowances">
      <h2 id="allowances">{say('Allowances and tolerances')}</h2>
      <p>
        {say(
          'What is bought beyond what is strung, and how far off a string that comes may be. These figures are the shop’s and hold for every job.',
        )}
      </p>
      {groupNames.map((group) => (
        <AllowanceCard key={group} group={group} name="allowances" />
      ))}
    </section>
  );
}

/** The figures of one group, each with where it comes from, to be changed and taken back. Cards of one name open one at a time. */
export function AllowanceCard({ group, name: cards }: { group: AllowanceGroup; name?: string }) {
  const { say } = useLanguage();
  const shop = useShop();
  const [changing, setChanging] = useState<AllowanceName>();
  return (
    <>
      <details name={cards} className="order-card">
        <summary>{say(allowanceGroups[group])}</summary>
        <ul className="order-lines">
          {allowanceNames
            .filter((name) => allowances[name].group === group)
            .map((name) => (
              <Figure
                key={name}
                name={name}
                kept={shop.allowances.get(name)}
                onChange={() => setChanging(name)}
              />
            ))}
        </ul>
      </details>
      {changing !== undefined && (
        <ChangeSheet key={changing} name={changing} shop={shop} onClose={() => setChanging(undefined)} />
      )}
    </>
  );
}

interface FigureProps {
  readonly name: AllowanceName;
  readonly kept: AllowanceKept | undefined;
  readonly onChange: () => void;
}

function Figure({ name, kept, onChange }: FigureProps) {
  const { desk } = useDesk();
  const { unit } = useSettings();
  const language = useLanguage();
  const { say, localDay } = language;
  const { words, starting, source } = allowances[name];
  const text = (value: number) => allowanceText(name, value, unit, language);
  return (
    <li className="order-line">
      <p>
        <strong>{text(kept?.value ?? starting)}</strong> {say(words)}
      </p>
      <p className="faint">
        {kept === undefined
          ? say('From: {source}', { source: sayKnown(source, language) })
          : say('From: {source}. Set by {by}, {day}; it started as {starting}.', {
              source: kept.source,
              by: kept.by,
              day: localDay(kept.at),
              starting: text(starting),
            })}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="button"
          aria-label={say('Change: {figure}', { figure: say(words) })}
          onClick={onChange}
        >
          {say('Change')}
        </button>
        {kept !== undefined && (
          <button
            type="button"
            className="button quiet"
            aria-label={say('Take back: {figure}', { figure: say(words) })}
            onClick={once(() =>
              desk.run((context) =>
                takeBackAllowance(context, { name, reason: 'taken back where it was set' }),
              ),
            )}
          >
            {say('Take back')}
          </button>
        )}
      </div>
    </li>
  );
}

interface ChangeProps {
  readonly name: AllowanceName;
  readonly shop: Shop;
  readonly onClose: () => void;
}

function ChangeSheet({ name, shop, onClose }: ChangeProps) {
  const { desk } = useDesk();
  const { unit } = useSettings();
  const language = useLanguage();
  const { say } = language;
  const kept = shop.allowances.get(name);
  const { group, words, starting } = allowances[name];
  const typedUnit = allowanceUnit(name, unit);
  const [value, setValue] = useState(() =>
    allowanceText(name, kept?.value ?? starting, unit, language).replace(/ (%|mm|in)$/, ''),
  );
  const [source, setSource] = useState('');
  const [problem, setProblem] = useState<string>();

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const wish = allowanceOf({ name, value, source }, unit, language);
      await desk.runHere((context) => setAllowance(context, wish));
      onClose();
    } catch (error) {
      setProblem(sentenceOf(error, language));
    }
  }
  return (
    <FormSheet
      title={`${say(allowanceGroups[group])}: ${say(words)}`}
      keep={say('Keep this figure')}
      problem={problem}
      onKeep={keep}
      onClose={onClose}
    >
      <TextField
        label={typedUnit === '' ? say('Figure') : say('Figure, {unit}', { unit: typedUnit })}
        value={value}
        onChange={setValue}
        maxLength={20}
        isNumber
      />
      <TextField
        label={say('Where it comes from')}
        hint={say('Your own experience, a maker, a book: it is printed beside the figure.')}
        value={source}
        onChange={setSource}
        maxLength={300}
      />
      {group === 'bass' ? (
        <BassEffect name={name} value={value} shop={shop} />
      ) : (
        group !== 'received' && <Effect name={name} value={value} shop={shop} />
      )}
    </FormSheet>
  );
}

/** What the open job needs by the figure that is typed, as soon as it is one. */
function Effect({ name, value, shop }: { name: AllowanceName; value: string; shop: Shop }) {
  const { job } = useDesk();
  const { unit } = useSettings();
  const language = useLanguage();
  const { say } = language;
  const now = useSupplies()?.supplies;
  const [then, setThen] = useState<Supplies>();
  useEffect(() => {
    let wish: ReturnType<typeof allowanceOf>;
    try {
      wish = allowanceOf({ name, value, source: '—' }, unit, language);
    } catch {
      // What is wrong with it is said when it is kept.
      setThen(undefined);
      return;
    }
    const policy = orderPolicyOf(new Map<string, KeptFigure>([...shop.allowances, [name, { ...wish }]]));
    let forget = () => {};
    // Typed figures follow each other: the last is what is asked for.
    const soon = setTimeout(() => {
      forget = countSuppliesAway({ job, policy }, ({ supplies }) => setThen(supplies), language);
    }, 300);
    return () => {
      clearTimeout(soon);
      forget();
    };
  }, [job, shop, name, value, unit, language]);
  if (now === undefined || then === undefined) return <p aria-live="polite">{say('Counting …')}</p>;
  const changed = changedLines(now, then);
  const quantity = (total: number | undefined, of: (typeof changed)[number]['unit']) =>
    total === undefined ? say('unknown') : quantityWords(total, of, language);
  return (
    <div aria-live="polite">
      <h3>{say('What this job needs by it')}</h3>
      {changed.length === 0 ? (
        <p>{say('No quantity of this job changes.')}</p>
      ) : (
        <ul>
          {changed.map(({ id, what, unit: of, before, after }) => (
            <li key={id}>
              {what}: {quantity(before, of)} → <strong>{quantity(after, of)}</strong>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** What the bass strings of the open job become by the figure that is typed, as soon as it is one. */
function BassEffect({ name, value, shop }: { name: AllowanceName; value: string; shop: Shop }) {
  const { job } = useDesk();
  const { unit } = useSettings();
  const language = useLanguage();
  const { say } = language;
  const { signed } = useOrders();
  const change = useMemo(() => {
    const orderBy = (allowances: BassAllowances) => bassOrder(job, { signed, allowances });
    try {
      const wish = allowanceOf({ name, value, source: '—' }, unit, language);
      const then = bassAllowancesOf(new Map<string, KeptFigure>([...shop.allowances, [name, wish]]));
      return bassChange(orderBy(bassAllowancesOf(shop.allowances)), orderBy(then));
    } catch {
      // What is wrong with it is said when it is kept.
      return undefined;
    }
  }, [job, signed, shop, name, value, unit, language]);
  const length = (metres: number) => lengthText(metres, unit, 'length', language);
  return (
    <div aria-live="polite">
      <h3>{say('What this job needs by it')}</h3>
      {change === undefined ? null : change.core === undefined && change.checks === undefined ? (
        <p>{say('Nothing in the bass strings of this job changes.')}</p>
      ) : (
        <ul>
          {change.core !== undefined && (
            <li>
              {say(
                'Core beyond the front termination, {strings, plural, one {# string} other {# strings}}; {note}:',
                { strings: change.core.strings, note: change.core.note },
              )}{' '}
              {length(change.core.before)} → <strong>{length(change.core.after)}</strong>
            </li>
          )}
          {change.checks !== undefined && (
            <li>
              {say('Checks that do not pass:')} {change.checks.before} →{' '}
              <strong>{change.checks.after}</strong>
            </li>
          )}
        </ul>
      )}
    </div>
  );
}
