import { currencyOf, minorUnits, noteName } from '@becket/core';
import { damageGravities } from '@becket/journal';
import { changeOrderTotals, recordDamage, withdrawEntry } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { TakePhoto } from '../../photos/take-photo.tsx';
import { Papers } from '../../piano/papers.tsx';
import { type DamageForm, damageOf, newDamageForm } from './after-strip-state.ts';
import { printPart } from './print-part.ts';
import './record-parts.css';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { SectionField } from '../../piano/section-field.tsx';

/** Damage that only showed once the strings were off, and the change order that follows from it. */
export function AfterStripPlace() {
  const language = useLanguage();
  const { localMoment, say, sayNodes } = language;
  const { desk, job } = useDesk();
  const problem = useObservable(desk.problem);
  const lastCurrency = job.damages.findLast(({ currency }) => currency !== undefined)?.currency;
  const [form, setForm] = useState<DamageForm>(newDamageForm(lastCurrency ?? currencyOf(language.locale)));
  const take = (part: Partial<DamageForm>) => setForm({ ...form, ...part });

  if (job.seal === undefined) {
    return (
      <section aria-labelledby="after-strip">
        <h2 id="after-strip">{say('Found after the strip')}</h2>
        <p>
          {sayNodes(
            'The as-found record is not sealed yet. Until the strings are off, what is seen belongs in the record itself. {link}',
            {
              link: (
                <a href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'strip' })}>
                  {say('Go to the strip check.')}
                </a>
              ),
            },
          )}
        </p>
      </section>
    );
  }

  async function submit(): Promise<void> {
    const done = await desk.run(async (context, id) => recordDamage(context, id, damageOf(form, language)));
    if (done) setForm(newDamageForm(form.currency));
  }

  const field = (name: keyof DamageForm, label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      maxLength={2000}
      value={form[name]}
      onChange={(value) => take({ [name]: value })}
    />
  );

  return (
    <section aria-labelledby="after-strip">
      <h2 id="after-strip">{say('Found after the strip')}</h2>
      <p>
        {say(
          'Look again now that the strings are off: under the felts, at the bridge caps, along the plate webs and the pin block. What nobody could see before is a change order, and the customer decides. A cracked plate or a loose block wants a specialist before anything else is done.',
        )}
      </p>
      <form onSubmit={once(submit)} aria-label={say('Note damage')}>
        {field('what', say('What was found'), say('such as a crack along the bridge pins'))}
        <div className="fields">
          <SectionField value={form.section} onChange={(section) => take({ section })} />
          {field('note', say('Note'), say('if it belongs to one, such as F#3'))}
          {field('point', say('Where exactly'))}
        </div>
        <Choice
          label={say('Gravity')}
          value={form.gravity}
          onChange={(gravity) => take({ gravity })}
          options={damageGravities.map((value) => ({ value, words: say(value) }))}
        />
        {field('whatToDo', say('What to do about it'))}
        {field('why', say('Why it did not show before the strip'), say('such as under the felt'))}
        <div className="fields">
          {field('price', say('Price'), say('empty while it is not known'))}
          {field('currency', say('Currency'), say('three letters, ISO 4217'))}
          {field('days', say('Working days it adds'))}
          {job.photos.length > 0 && (
            <SelectField
              label={say('Photo')}
              value={form.photo}
              onChange={(photo) => take({ photo })}
              options={[
                { value: '', words: say('none') },
                ...job.photos.map(({ digest, shows, at }) => ({
                  value: digest,
                  words: shows ?? say('photo of {moment}', { moment: localMoment(at) }),
                })),
              ]}
            />
          )}
        </div>
        <TakePhoto
          stage="after the strip"
          place={() => (form.section === '' ? {} : { section: form.section })}
          shows={form.what}
          onKept={(photo) => setForm((now) => ({ ...now, photo }))}
        />
        <Problem says={problem} />
        <button type="submit" className="button strong">
          {say('Put it on the change order')}
        </button>
      </form>
      <ChangeOrder />
      {job.damages.length > 0 && (
        <Papers level={3} offers={[{ paper: 'change-order', words: say('Change order') }]} />
      )}
    </section>
  );
}

function ChangeOrder() {
  const language = useLanguage();
  const { list, localDay, plain, say, sayNodes } = language;
  const { desk, job } = useDesk();
  const totals = changeOrderTotals(job.damages);
  if (job.damages.length === 0)
    return <p className="faint">{say('Nothing was found after the strip so far.')}</p>;
  return (
    <section aria-labelledby="change-order" className="change-order">
      <div className="part-head">
        <h3 id="change-order">{say('Change order, draft: {title}', { title: job.title })}</h3>
        <button type="button" className="button" onClick={() => printPart('change-order')}>
          {say('Print the draft')}
        </button>
      </div>
      <p className="faint">
        {say(
          'Found after the as-found record was sealed on {day}. Nothing of it is agreed until the customer has signed.',
          { day: localDay(job.seal!.at) },
        )}
      </p>
      <ol>
        {job.damages.map((one) => {
          const { place, priceMinorUnits, currency, days } = one;
          const where = [
            place.key === undefined ? undefined : noteName(place.key),
            place.section === undefined ? undefined : say('section {section}', { section: place.section }),
            place.point,
          ].filter((word) => word !== undefined);
          return (
            <li key={one.entry} className="change-line">
              {sayNodes(
                '{what}, {where} ({gravity}). To do: {whatToDo}. Not seen before: {reason}. {price}, {days}. {by}',
                {
                  what: <strong>{one.what}</strong>,
                  where: where.length === 0 ? say('the whole piano') : where.join(', '),
                  gravity: say(one.gravity),
                  whatToDo: one.whatToDo,
                  reason: one.reason,
                  price:
                    priceMinorUnits === undefined || currency === undefined
                      ? say('Not priced yet')
                      : language.money(minorUnits(priceMinorUnits), currency),
                  days:
                    days === undefined
                      ? say('days not known')
                      : say('{days} working days', { days: plain(days) }),
                  by: (
                    <>
                      {one.photo !== undefined && `${say('With a photo.')} `}
                      <span className="faint">{say('Noted by {by}.', { by: one.by })}</span>
                    </>
                  ),
                },
              )}{' '}
              <button
                type="button"
                className="button quiet"
                aria-label={say('Take back {what}', { what: one.what })}
                onClick={once(() =>
                  desk.run((context, id) =>
                    withdrawEntry(context, id, one.entry, say('taken off the change order')),
                  ),
                )}
              >
                {say('Take back')}
              </button>
            </li>
          );
        })}
      </ol>
      <p className="sum" data-sum>
        {say(
          'Together: {sum}{days, select, none {} other {, {days} working days}}{withoutPrice, plural, =0 {} other {; # not priced yet}}{withoutDays, plural, =0 {} other {; days not known for #}}.',
          {
            sum:
              totals.prices.length === 0
                ? say('no price yet')
                : list(totals.prices.map((sum) => language.money(minorUnits(sum.minorUnits), sum.currency))),
            days: totals.withoutDays < job.damages.length ? plain(totals.days) : 'none',
            withoutPrice: totals.withoutPrice,
            withoutDays: totals.withoutDays,
          },
        )}
      </p>
      <p>{say('Agreed, customer, date:')}</p>
      <div className="signature" />
    </section>
  );
}
