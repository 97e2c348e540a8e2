import { keyRangeAt, type Language, message, noteName } from '@becket/core';
import { frontTerminations, type Section } from '@becket/journal';
import { describeUnisons } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { ReasonField, useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { keysBetween, keysLeft, type StringingRun, stringingRuns } from './runs.ts';
import { formOfSection, keepSection, type SectionForm, takeSectionOut } from './section-form.ts';

/** Where the struts and breaks are, and how the notes are strung. */
export function SectionsPlace() {
  return (
    <>
      <ReasonField />
      <Sections />
      <Stringing />
    </>
  );
}

const rangeWords = (
  { firstKey, lastKey }: { firstKey: number; lastKey: number },
  { say }: Language,
): string =>
  firstKey === lastKey
    ? noteName(firstKey)
    : say('{first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) });

function Sections() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const [open, setOpen] = useState<{ form: SectionForm; before: Section | undefined }>();
  const left = keysLeft(job.piano!, (key) => keyRangeAt(key, job.sections) !== undefined);
  const next = left[0];
  return (
    <section aria-labelledby="sections">
      <h2 id="sections">{say('Sections')}</h2>
      <p>
        {say(
          'A section is a run of notes between two plate struts, on one bridge, with one kind of front termination.',
        )}
      </p>
      {job.sections.length > 0 && (
        <TableFrame label={say('Sections of the piano')}>
          <table className="table">
            <thead>
              <tr>
                <th scope="col">{say('section')}</th>
                <th scope="col">{say('notes')}</th>
                <th scope="col">{say('bridge')}</th>
                <th scope="col">{say('front termination')}</th>
                <th scope="col">
                  <span className="unseen">{say('change')}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {job.sections.map((section) => (
                <tr key={section.section}>
                  <th scope="row">{section.section}</th>
                  <td>{rangeWords(section, language)}</td>
                  <td>{section.bridge === 'unknown' ? say('unknown') : section.bridge}</td>
                  <td>{say(section.frontTermination)}</td>
                  <td className="reach">
                    <button
                      type="button"
                      className="button quiet"
                      aria-label={say('Change section {section}', { section: section.section })}
                      onClick={() => setOpen({ form: formOfSection(section), before: section })}
                    >
                      {say('Change')}
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableFrame>
      )}
      {left.length > 0 && (
        <p>
          {say('In no section yet: {notes}.', {
            notes: left.map((range) => rangeWords(range, language)).join(', '),
          })}
        </p>
      )}
      <button
        type="button"
        className="button"
        onClick={() =>
          setOpen({
            before: undefined,
            form: {
              name: '',
              firstNote: next === undefined ? '' : noteName(next.firstKey),
              lastNote: next === undefined ? '' : noteName(next.lastKey),
              bridge: '',
              frontTermination: 'unknown',
            },
          })
        }
      >
        {say('Add a section')}
      </button>
      {open !== undefined && <SectionSheet {...open} onClose={() => setOpen(undefined)} />}
    </section>
  );
}

interface SectionSheetProps {
  readonly form: SectionForm;
  readonly before: Section | undefined;
  readonly onClose: () => void;
}

function SectionSheet({ form: start, before, onClose }: SectionSheetProps) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [form, setForm] = useState(start);
  const { reason } = useSaidReason();
  const field = (name: 'name' | 'firstNote' | 'lastNote' | 'bridge', label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      maxLength={60}
      value={form[name]}
      onChange={(value) => setForm({ ...form, [name]: value })}
    />
  );
  return (
    <RecordSheet
      title={
        before === undefined ? say('Add a section') : say('Section {section}', { section: before.section })
      }
      keep={say('Keep the section')}
      onClose={onClose}
      onKeep={() =>
        desk.run((context, id) => keepSection(context, id, { state: job, form, before, reason }, language))
      }
      more={
        before !== undefined && (
          <button
            type="button"
            className="button quiet"
            onClick={once(async () => {
              const done = await desk.run((context, id) =>
                takeSectionOut(context, id, before, {
                  reason,
                  otherwise: say('not a section of this piano'),
                }),
              );
              if (done) onClose();
            })}
          >
            {say('Take it out')}
          </button>
        )
      }
    >
      {field('name', say('Name of the section'))}
      <div className="fields">
        {field('firstNote', say('First note of the section'))}
        {field('lastNote', say('Last note of the section'))}
      </div>
      {field(
        'bridge',
        say('Bridge'),
        say('its name in this job, such as bass or long; empty when nobody has looked'),
      )}
      <SelectField
        label={say('Front termination')}
        value={form.frontTermination}
        onChange={(frontTermination) => setForm({ ...form, frontTermination })}
        options={frontTerminations.map((value) => ({ value, words: say(value) }))}
      />
    </RecordSheet>
  );
}

const kindWords = {
  'plain/0': message('plain'),
  'wound/1': message('wound, one layer'),
  'wound/2': message('wound, two layers'),
} as const;
type Kind = keyof typeof kindWords;

function Stringing() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const [open, setOpen] = useState<Partial<StringingRun>>();
  const runs = stringingRuns(job.unisons);
  const left = keysLeft(job.piano!, (key) => job.unisons.has(key));
  return (
    <section aria-labelledby="stringing">
      <h2 id="stringing">{say('Stringing')}</h2>
      <p>
        {say(
          'How many strings a note has, and of which kind. A later description stands in place of an earlier one.',
        )}
      </p>
      {runs.length > 0 && (
        <TableFrame label={say('Runs of notes')}>
          <table className="table">
            <thead>
              <tr>
                <th scope="col">{say('notes')}</th>
                <th scope="col">{say('strings')}</th>
                <th scope="col">{say('kind')}</th>
                <th scope="col">
                  <span className="unseen">{say('change')}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {runs.map((run) => (
                <tr key={run.firstKey}>
                  <th scope="row">{rangeWords(run, language)}</th>
                  <td>{run.strings}</td>
                  <td>{say(kindWords[`${run.winding}/${run.layers}` as Kind])}</td>
                  <td className="reach">
                    <button
                      type="button"
                      className="button quiet"
                      aria-label={say('Change the stringing of {notes}', {
                        notes: rangeWords(run, language),
                      })}
                      onClick={() => setOpen(run)}
                    >
                      {say('Change')}
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableFrame>
      )}
      {left.length > 0 && (
        <p>
          {say('Not described yet: {notes}.', {
            notes: left.map((range) => rangeWords(range, language)).join(', '),
          })}
        </p>
      )}
      <button type="button" className="button" onClick={() => setOpen(left[0] ?? {})}>
        {say('Describe a run of notes')}
      </button>
      {open !== undefined && <StringingSheet run={open} onClose={() => setOpen(undefined)} />}
    </section>
  );
}

function StringingSheet({ run, onClose }: { run: Partial<StringingRun>; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const said = useSaidReason();
  const [first, setFirst] = useState(run.firstKey === undefined ? '' : noteName(run.firstKey));
  const [last, setLast] = useState(run.lastKey === undefined ? '' : noteName(run.lastKey));
  const [strings, setStrings] = useState(String(run.strings ?? 3));
  const [kind, setKind] = useState<Kind>(
    run.winding === undefined ? 'plain/0' : (`${run.winding}/${run.layers}` as Kind),
  );
  const [winding, layers] = kind.split('/') as ['plain' | 'wound', string];
  return (
    <RecordSheet
      title={say('Stringing of a run of notes')}
      keep={say('Keep the stringing')}
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) =>
          describeUnisons(context, id, [
            {
              ...keysBetween(first, last, language),
              strings: Number(strings),
              winding,
              layers: Number(layers),
              ...said,
            },
          ]),
        )
      }
    >
      <div className="fields">
        <TextField label={say('First note of the run')} value={first} onChange={setFirst} />
        <TextField label={say('Last note of the run')} value={last} onChange={setLast} />
      </div>
      <Choice
        label={say('Strings to the note')}
        value={strings}
        onChange={setStrings}
        options={['1', '2', '3'].map((value) => ({ value, words: value }))}
      />
      <Choice
        label={say('Kind')}
        value={kind}
        onChange={setKind}
        options={(Object.keys(kindWords) as Kind[]).map((value) => ({ value, words: say(kindWords[value]) }))}
      />
    </RecordSheet>
  );
}
