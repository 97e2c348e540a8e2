import { currencyOf, type Language } from '@becket/core';
import type { Job } from '@becket/journal';
import {
  draftEstimate,
  type EstimateToMake,
  estimateStanding,
  estimateTotals,
  type LearnedHours,
  makeEstimate,
} from '@becket/tasks';
import { useMemo, useState } from 'react';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { todayHere } from '../../parts/day-field.tsx';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { Papers } from '../../piano/papers.tsx';
import { ChangeAnswers } from './change-answers.tsx';
import { EstimateAnswer } from './estimate-answer.tsx';
import {
  type EstimateHead,
  estimateOf,
  keepRates,
  keptRates,
  type LineForm,
  linesOfDraft,
  linesOfEstimate,
  moneyWords,
  type RatesForm,
  ratesOf,
  ratesOfEstimate,
} from './estimate-state.ts';
import { HoursWorked, useLearnedHours } from './hours-worked.tsx';

/** The price range for the customer, version by version, with what they said to it. */
export function EstimatePlace() {
  const { say } = useLanguage();
  const { job } = useDesk();
  const { latest } = estimateStanding(job);
  const learned = useLearnedHours();
  const [isWriting, setWriting] = useState(latest === undefined);
  return (
    <section aria-labelledby="estimate">
      <h2 id="estimate">{say('Estimate')}</h2>
      {job.estimates.length > 0 && (
        <ul className="plain-list estimate-versions" aria-label={say('Versions of the estimate')}>
          {[...job.estimates].reverse().map((estimate) => (
            <li key={estimate.entry}>
              <EstimateVersion estimate={estimate} isLast={estimate === latest} />
            </li>
          ))}
        </ul>
      )}
      {isWriting ? (
        <EstimateForm from={latest} learned={learned} onMade={() => setWriting(false)} />
      ) : (
        <button type="button" className="button" onClick={() => setWriting(true)}>
          {say('Write version {version}', { version: (latest?.version ?? 0) + 1 })}
        </button>
      )}
      {latest !== undefined && <Papers level={3} offers={[{ paper: 'estimate', words: say('Estimate') }]} />}
      <ChangeAnswers />
      <HoursWorked learned={learned} />
    </section>
  );
}

function EstimateVersion({ estimate, isLast }: { estimate: Job['estimates'][number]; isLast: boolean }) {
  const language = useLanguage();
  const { day, fixed, localDay, plain, say, sayNodes } = language;
  const { currency } = estimate;
  const totals = estimateTotals(estimate);
  const conditional = estimate.lines.filter(({ ifFound }) => ifFound !== undefined);
  return (
    <article
      className="estimate-version"
      aria-label={say('Version {version}', { version: estimate.version })}
    >
      <h3>
        {sayNodes('Version {version} {when}', {
          version: estimate.version,
          when: (
            <span className="faint">
              {localDay(estimate.at)}, {estimate.by}
            </span>
          ),
        })}
      </h3>
      <Sums estimate={estimate} />
      <p className="faint">
        {say(
          '{firm} firm lines, {conditional, plural, =0 {nothing conditional} other {# only if found}}; {hours} hours{days, select, none {} other {, {days} working days}}{until, select, none {} other {; valid until {until}}}.',
          {
            firm: estimate.lines.length - conditional.length,
            conditional: conditional.length,
            hours: fixed(totals.minutes / 60, 1),
            days: estimate.workingDays === undefined ? 'none' : plain(estimate.workingDays),
            until: estimate.validUntil === undefined ? 'none' : day(estimate.validUntil),
          },
        )}
      </p>
      <details>
        <summary>{say('Its lines')}</summary>
        <ul>
          {estimate.lines.map(({ id, what, ifFound }) => (
            <li key={id}>
              {ifFound !== undefined && <strong>{say('If found: {ifFound}.', { ifFound })} </strong>}
              {what}: {moneyWords(totals.amounts.get(id)!, currency, language)}
            </li>
          ))}
        </ul>
      </details>
      <EstimateAnswer key={estimate.entry} estimate={estimate} isLast={isLast} />
    </article>
  );
}

/** What it comes to: the range first, then how it is made up. */
function Sums({ estimate }: { estimate: Pick<EstimateToMake, 'lines' | 'currency' | 'pricesIncludeTax'> }) {
  const language = useLanguage();
  const { plain, say } = language;
  const { currency } = estimate;
  const totals = estimateTotals(estimate);
  const money = (amount: number) => moneyWords(amount, currency, language);
  return (
    <>
      <p className="estimate-sum" data-estimate-sum>
        {totals.low === totals.high
          ? money(totals.low)
          : say('{low} to {high}', { low: money(totals.low), high: money(totals.high) })}{' '}
        <span className="faint">{say('tax included')}</span>
      </p>
      <dl className="facts">
        <dt>{say('labour')}</dt>
        <dd>{money(totals.groups.labour)}</dd>
        <dt>{say('materials')}</dt>
        <dd>{money(totals.groups.materials)}</dd>
        {totals.groups.other !== 0 && (
          <>
            <dt>{say('other')}</dt>
            <dd>{money(totals.groups.other)}</dd>
          </>
        )}
        {totals.firm.classes.map(({ rate_basisPoints, tax, net }) => (
          <div key={rate_basisPoints} className="facts-row">
            <dt>{say('tax {rate} %', { rate: plain(rate_basisPoints / 100) })}</dt>
            <dd>
              {money(tax)} <span className="faint">{say('on {money}', { money: money(net) })}</span>
            </dd>
          </div>
        ))}
        <dt>{say('firm, with tax')}</dt>
        <dd>
          <strong>{money(totals.firm.gross)}</strong>
        </dd>
        {totals.conditional !== 0 && (
          <>
            <dt>{say('with everything conditional')}</dt>
            <dd>{money(totals.withConditional.gross)}</dd>
          </>
        )}
      </dl>
    </>
  );
}

const storageHere = typeof localStorage === 'undefined' ? undefined : localStorage;

interface EstimateFormProps {
  readonly from: Job['estimates'][number] | undefined;
  readonly learned: readonly LearnedHours[];
  readonly onMade: () => void;
}

function EstimateForm({ from, learned, onMade }: EstimateFormProps) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [rates, setRates] = useState<RatesForm>(() =>
    from === undefined
      ? keptRates(storageHere, currencyOf(language.locale))
      : ratesOfEstimate(from, language),
  );
  const [lines, setLines] = useState<readonly LineForm[] | undefined>(() =>
    from === undefined ? undefined : linesOfEstimate(from, language),
  );
  const [head, setHead] = useState<EstimateHead>({
    validUntil: '',
    workingDays: from?.workingDays === undefined ? '' : String(from.workingDays),
    note: from?.note ?? '',
  });
  const [problem, setProblem] = useState<string>();
  const [said, setSaid] = useState<readonly string[]>([]);
  const [assumed, setAssumed] = useState<readonly string[]>([]);
  const { estimate, problems } = useMemo(
    () =>
      lines === undefined
        ? { estimate: undefined, problems: new Map<string, string>() }
        : estimateOf(lines, rates, head, language),
    [lines, rates, head, language],
  );

  function draft(): void {
    try {
      const first = draftEstimate(job, { rates: ratesOf(rates, undefined, language), learned, language });
      setLines(linesOfDraft(first, language));
      setAssumed(first.assumed);
      setProblem(undefined);
    } catch (error) {
      setProblem(sentenceOf(error));
    }
  }

  async function make(): Promise<void> {
    if (estimate === undefined) return;
    setProblem(undefined);
    try {
      const done = await desk.runHere((context, id) => makeEstimate(context, id, estimate));
      keepRates(storageHere, rates);
      setSaid(done.said);
      onMade();
    } catch (error) {
      setProblem(sentenceOf(error));
    }
  }

  const change = (id: string, part: Partial<LineForm>) =>
    setLines((now) => now?.map((line) => (line.id === id ? { ...line, ...part } : line)));
  const rate = (
    name: 'currency' | 'hourlyRate' | 'labourTax' | 'materialsTax',
    label: string,
    hint: string,
  ) => (
    <Field label={label} hint={hint}>
      {(ids) => (
        <input
          {...ids}
          className="input"
          inputMode={name === 'currency' ? 'text' : 'decimal'}
          autoComplete="off"
          value={rates[name]}
          onChange={(event) => setRates({ ...rates, [name]: event.target.value })}
        />
      )}
    </Field>
  );

  return (
    <section aria-labelledby="estimate-form">
      <h3 id="estimate-form">
        {from === undefined
          ? say('A first estimate')
          : say('Version {version}', { version: from.version + 1 })}
      </h3>
      <div className="fields">
        {rate('currency', say('Currency'), say('three letters, ISO 4217'))}
        {rate('hourlyRate', say('Hourly rate'), say('what an hour of work costs'))}
        {rate('labourTax', say('Tax on labour (%)'), say('0 where there is none'))}
        {rate('materialsTax', say('Tax on materials (%)'), say('0 where there is none'))}
      </div>
      <Choice
        label={say('Prices here are')}
        value={rates.pricesIncludeTax ? 'with' : 'without'}
        onChange={(value) => setRates({ ...rates, pricesIncludeTax: value === 'with' })}
        options={[
          { value: 'without', words: say('without tax') },
          { value: 'with', words: say('with tax in them') },
        ]}
      />
      <p className="faint">
        {say('Which tax a piece of work bears, and what a bill must state, is for local rules.')}
      </p>
      <Problem says={problem} />
      <div className="button-row">
        <button type="button" className={lines === undefined ? 'button strong' : 'button'} onClick={draft}>
          {lines === undefined ? say('Draft it from the job') : say('Draft it anew from the job')}
        </button>
      </div>
      {assumed.map((sentence) => (
        <p key={sentence} className="question">
          ? {sentence}
        </p>
      ))}
      {lines !== undefined && (
        <>
          <ul className="estimate-lines" aria-label={say('Lines of the estimate')}>
            {lines.map((line) => (
              <li key={line.id}>
                <LineFields
                  line={line}
                  problem={line.isLeftOut ? undefined : problems.get(line.id)}
                  onChange={(part) => change(line.id, part)}
                />
              </li>
            ))}
          </ul>
          <div className="button-row">
            <button
              type="button"
              className="button"
              onClick={() => setLines([...lines, newLine(lines, 'time', language)])}
            >
              {say('Add work')}
            </button>
            <button
              type="button"
              className="button"
              onClick={() => setLines([...lines, newLine(lines, 'quantity', language)])}
            >
              {say('Add something bought')}
            </button>
          </div>
          <div className="fields">
            <Field label={say('Valid until')} hint={say('may stay empty')}>
              {(ids) => (
                <input
                  {...ids}
                  type="date"
                  className="input"
                  min={todayHere()}
                  value={head.validUntil}
                  onChange={(event) => setHead({ ...head, validUntil: event.target.value })}
                />
              )}
            </Field>
            <TextField
              label={say('Working days')}
              hint={say('may stay empty')}
              isNumber
              value={head.workingDays}
              onChange={(value) => setHead({ ...head, workingDays: value })}
            />
            <TextField
              label={say('Note to the customer')}
              rows={2}
              maxLength={2000}
              value={head.note}
              onChange={(value) => setHead({ ...head, note: value })}
            />
          </div>
          {estimate === undefined ? (
            <p role="status" className="question">
              {say(
                '? {count, plural, one {# line is} other {# lines are}} not ready: price them, or leave them out on purpose.',
                { count: problems.size },
              )}
            </p>
          ) : (
            <Sums estimate={estimate} />
          )}
          <div className="button-row">
            <button
              type="button"
              className="button strong"
              disabled={estimate === undefined}
              onClick={once(make)}
            >
              {say('Make version {version}', { version: (from?.version ?? 0) + 1 })}
            </button>
          </div>
        </>
      )}
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}

function newLine(lines: readonly LineForm[], by: LineForm['by'], { say }: Language): LineForm {
  let number = 1;
  while (lines.some(({ id }) => id === `own-${number}`)) number += 1;
  return {
    id: `own-${number}`,
    group: by === 'time' ? 'labour' : 'materials',
    what: '',
    by,
    amount: '',
    unit: by === 'time' ? 'hours' : say('piece'),
    price: '',
    taxPercent: lines.find((line) => line.by === by)?.taxPercent ?? '',
    ifFound: '',
    isLeftOut: false,
    because: '',
  };
}

function LineFields({
  line,
  problem,
  onChange,
}: {
  line: LineForm;
  problem: string | undefined;
  onChange: (part: Partial<LineForm>) => void;
}) {
  const { say } = useLanguage();
  const field = (
    name: 'what' | 'amount' | 'unit' | 'price' | 'taxPercent' | 'ifFound',
    label: string,
    mode: 'text' | 'decimal',
  ) => (
    <label className={`line-field ${name}`}>
      <span className="faint">{label}</span>
      <input
        className="input"
        inputMode={mode}
        autoComplete="off"
        value={line[name]}
        onChange={(event) => onChange({ [name]: event.target.value })}
      />
    </label>
  );
  const name = line.what || say('new line');
  if (line.isLeftOut)
    return (
      <div className="estimate-line left-out">
        <span className="faint">{say('Left out: {name}', { name })}</span>
        <button
          type="button"
          className="button quiet"
          aria-label={say('Take {name} in again', { name })}
          onClick={() => onChange({ isLeftOut: false })}
        >
          {say('Take it in')}
        </button>
      </div>
    );
  return (
    <fieldset className="estimate-line" data-conditional={line.ifFound !== '' || undefined}>
      <legend className="unseen">{name}</legend>
      {field('what', line.group === 'labour' ? say('Work') : say('Material'), 'text')}
      {field('amount', line.by === 'time' ? say('Hours') : say('Quantity'), 'decimal')}
      {line.by === 'quantity' && field('unit', say('Unit'), 'text')}
      {line.by === 'quantity' && field('price', say('Price of one'), 'decimal')}
      {field('taxPercent', say('Tax %'), 'decimal')}
      {field('ifFound', say('Only if found'), 'text')}
      <button
        type="button"
        className="button quiet"
        aria-label={say('Leave out {name}', { name })}
        onClick={() => onChange({ isLeftOut: true })}
      >
        {say('Leave out')}
      </button>
      {problem !== undefined ? (
        <p className="question line-note">? {problem}</p>
      ) : (
        line.because !== '' && <p className="faint line-note">{line.because}</p>
      )}
    </fieldset>
  );
}
