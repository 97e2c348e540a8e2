import { absences } from '@becket/journal';
import { recordFacts } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { TakeItBack } from './part-list.tsx';
import { type SoftPart, softPartForm, softPartOf, softParts, softPartWords } from './parts-state.ts';
import { useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { unitWords } from './unit-words.ts';

/** Felt, braid, punchings and bushings of a section, as measured. */
export function SoftParts({ section }: { section: string }) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const [open, setOpen] = useState<SoftPart>();
  return (
    <section aria-labelledby="soft-parts">
      <h3 id="soft-parts">{say('Felt, braid, punchings and bushings')}</h3>
      <ul className="seen-list" aria-label={say('Soft parts of {section}', { section })}>
        {softParts.map((part) => {
          const known = job.softParts.find((one) => one.section === section && one.part === part);
          return (
            <li key={part}>
              <strong>{say(part)}</strong>
              <span className={known === undefined ? 'faint' : undefined}>
                {known === undefined ? say('nothing measured') : softPartWords(known, unit, language)}
              </span>
              <span className="button-row seen-answers">
                <button
                  type="button"
                  className="button"
                  aria-label={say('{is, select, new {Measure} other {Change}} {part}, section {section}', {
                    is: known === undefined ? 'new' : 'known',
                    part: say(part),
                    section,
                  })}
                  onClick={() => setOpen(part)}
                >
                  {known === undefined ? say('Measure') : say('Change')}
                </button>
              </span>
            </li>
          );
        })}
      </ul>
      {open !== undefined && (
        <SoftPartSheet part={open} section={section} onClose={() => setOpen(undefined)} />
      )}
    </section>
  );
}

function SoftPartSheet({ part, section, onClose }: { part: SoftPart; section: string; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const said = useSaidReason();
  const standing = job.softParts.find((one) => one.section === section && one.part === part);
  const [form, setForm] = useState(() => softPartForm(standing, unit, language));
  const title = say('{part}, section {section}', { part: say(part), section });
  const hint = say('in {unit}, or with its unit', { unit: unitWords(unit, language) });
  return (
    <RecordSheet
      title={title}
      keep={say('Keep it')}
      onClose={onClose}
      more={<TakeItBack entry={standing?.entry} title={title} onDone={onClose} />}
      onKeep={() =>
        desk.run(async (context, id) =>
          recordFacts(context, id, [{ ...softPartOf(form, { part, section, unit }, language), ...said }]),
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
      {form.answer === 'known' ? (
        <div className="fields">
          <TextField
            label={say('Thickness')}
            hint={hint}
            value={form.thickness}
            onChange={(thickness) => setForm({ ...form, thickness })}
          />
          <TextField
            label={say('Length')}
            hint={hint}
            value={form.length}
            onChange={(length) => setForm({ ...form, length })}
          />
          <TextField
            label={say('Width')}
            hint={hint}
            value={form.width}
            onChange={(width) => setForm({ ...form, width })}
          />
          <TextField
            label={say('Colour')}
            value={form.colour}
            onChange={(colour) => setForm({ ...form, colour })}
          />
          <TextField
            label={say('Where it lies')}
            value={form.where}
            onChange={(where) => setForm({ ...form, where })}
          />
        </div>
      ) : (
        <TextField
          label={say('Why, if there is something to say')}
          value={form.why}
          onChange={(why) => setForm({ ...form, why })}
        />
      )}
    </RecordSheet>
  );
}
