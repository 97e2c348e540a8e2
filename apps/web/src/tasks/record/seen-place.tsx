import { type Absence, absences, type ObservedThing, observedThings } from '@becket/journal';
import { useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { PlacePhotos } from '../../photos/place-photos.tsx';
import { TakeItBack } from './part-list.tsx';
import { PlaceReadings } from './place-readings.tsx';
import { PlateParts } from './plate-parts.tsx';
import { ReasonField, useSaidReason } from './reason-field.tsx';
import './record-parts.css';
import { once } from '../../parts/once.ts';
import { RecordSheet } from './record-sheet.tsx';
import { recordViewOf } from './record-state.ts';
import { SamplesKept } from './samples-kept.tsx';
import { useSection } from './section-choice.tsx';
import { keepSeen, openThings, seenAt, seenForm, type ThingSeen, thingsSeen } from './seen.ts';
import { SoftParts } from './soft-parts.tsx';
import { TakenBack } from './taken-back.tsx';
import { WindingsSaid } from './windings-said.tsx';

/** What the strip takes away beside the strings, a section at a time: seen, and measured. */
export function SeenPlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, record } = useDesk();
  const chosen = useSection();
  const [isWhole, setWhole] = useState(chosen === undefined);
  const section = isWhole ? undefined : chosen;
  const said = useSaidReason();
  const open = useMemo(
    () =>
      job.sections.map((one) => ({
        section: one.section,
        count: openThings(job, record, one.section, language),
      })),
    [job, record, language],
  );
  return (
    <section aria-labelledby="seen">
      <h2 id="seen">{say('Seen and measured')}</h2>
      <Choice
        label={say('Section, and how many things are open in it')}
        value={section === undefined ? 'whole piano' : `section ${section}`}
        onChange={(value) => {
          setWhole(value === 'whole piano');
          if (value !== 'whole piano')
            recordViewOf(desk.id).update({ section: value.slice('section '.length) });
        }}
        options={[
          ...open.map((one) => ({
            value: `section ${one.section}`,
            words: one.count === 0 ? `${one.section} ✓` : `${one.section}: ${one.count}`,
            spoken: say('{section}, {count, plural, =0 {nothing} other {#}} open', {
              section: one.section,
              count: one.count,
            }),
          })),
          { value: 'whole piano', words: say('whole piano'), spoken: say('the whole piano') },
        ]}
      />
      <ReasonField />
      <ThingsSeen section={section} />
      <PlacePhotos section={section} reason={said.reason} />
      {section !== undefined && (
        <>
          <SoftParts section={section} />
          <PlateParts section={section} />
          <WindingsSaid section={section} />
        </>
      )}
      <PlaceReadings section={section} />
      {section === undefined && <SamplesKept />}
      <TakenBack />
    </section>
  );
}

function ThingsSeen({ section }: { section: string | undefined }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, record } = useDesk();
  const said = useSaidReason();
  const [open, setOpen] = useState<ObservedThing>();
  const things = useMemo(() => thingsSeen(job, record, section, language), [job, record, section, language]);
  const left = things.filter(({ isOpen }) => isOpen).length;
  const where = section === undefined ? say('whole piano') : say('section {section}', { section });
  const answer = ({ thing }: ThingSeen, is: Absence) =>
    desk.run((context, id) => {
      // The tap before may be kept and not drawn yet: what corrects a slip takes the place of it.
      const seen = seenAt(desk.now()?.job ?? job, thing, section);
      return keepSeen(context, id, { thing, section, seen }, { answer: is, text: '' }, said, language);
    });
  return (
    <section aria-labelledby="things-seen">
      <h3 id="things-seen">{say('Things seen')}</h3>
      <p data-open role="status">
        {section === undefined
          ? say('What is noted here speaks for every section of which nothing else is said.')
          : left === 0
            ? say('Nothing is open in this section.')
            : say('{left} of {things} things are open in this section.', {
                left,
                things: things.length - 1,
              })}
      </p>
      <ul className="seen-list" aria-label={say('Things seen, {where}', { where })}>
        {things.map((one) => (
          <li key={one.thing} data-thing={one.thing} data-open={one.isOpen || undefined}>
            <strong>{say(observedThings[one.thing])}</strong>
            <span className={one.seen === undefined ? 'faint' : undefined}>
              {one.isOpen && <span aria-hidden="true">○ </span>}
              {one.words}
            </span>
            <span className="button-row seen-answers">
              <button
                type="button"
                className="button"
                aria-label={say('{is, select, new {Note} other {Change}} {thing}, {where}', {
                  is: one.seen === undefined ? 'new' : 'seen',
                  thing: say(observedThings[one.thing]),
                  where,
                })}
                onClick={() => setOpen(one.thing)}
              >
                {one.seen === undefined ? say('[write down] Note') : say('Change')}
              </button>
              {one.isOpen &&
                absences
                  .filter((is) => is !== one.seen?.answer.is)
                  .map((is) => (
                    <button
                      key={is}
                      type="button"
                      className="button quiet"
                      aria-label={`${say(observedThings[one.thing])}: ${say(is)}`}
                      onClick={once(() => answer(one, is))}
                    >
                      {say(is)}
                    </button>
                  ))}
            </span>
          </li>
        ))}
      </ul>
      {open !== undefined && (
        <SeenSheet
          title={`${say(observedThings[open])}, ${where}`}
          one={things.find(({ thing }) => thing === open)!}
          section={section}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

function SeenSheet({
  title,
  one,
  section,
  onClose,
}: {
  title: string;
  one: ThingSeen;
  section: string | undefined;
  onClose: () => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const said = useSaidReason();
  const [form, setForm] = useState(() => seenForm(one.seen));
  const isKnown = form.answer === 'known';
  return (
    <RecordSheet
      title={title}
      keep={say('Keep the note')}
      onClose={onClose}
      more={<TakeItBack entry={one.seen?.entry} title={title} onDone={onClose} />}
      onKeep={() =>
        desk.run((context, id) =>
          keepSeen(context, id, { thing: one.thing, section, seen: one.seen }, form, said, language),
        )
      }
    >
      <Choice
        label={say('What was found')}
        value={form.answer}
        onChange={(answer) => setForm({ ...form, answer })}
        options={[
          { value: 'known', words: say('it is there') },
          ...absences.map((value) => ({ value, words: say(value) })),
        ]}
      />
      <TextField
        label={isKnown ? say('What is there') : say('Why, if there is something to say')}
        rows={4}
        maxLength={isKnown ? 2000 : 500}
        value={form.text}
        onChange={(text) => setForm({ ...form, text })}
      />
    </RecordSheet>
  );
}
