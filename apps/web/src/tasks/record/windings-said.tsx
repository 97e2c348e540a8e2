import { type Language, noteName } from '@becket/core';
import { recordFacts } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { PartHead } from './part-list.tsx';
import { loopStyles, twists, windingsOf } from './parts-state.ts';
import { useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { type WindingRun, windingForm, windingRuns } from './windings-state.ts';

/** Loop and twist of the wound strings of a section, in runs that are alike. */
export function WindingsSaid({ section }: { section: string }) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const [open, setOpen] = useState<WindingRun | 'new'>();
  const runs = windingRuns(job, section);
  if (runs.length === 0) return null;
  return (
    <section aria-labelledby="windings">
      <PartHead
        id="windings"
        words={say('Windings: loop and twist')}
        add={say('Say a winding')}
        onAdd={() => setOpen('new')}
      />
      <ul className="plain-list" aria-label={say('Windings: loop and twist')}>
        {runs.map((run) => {
          const { firstKey, string, said } = run;
          const where = runText(run, language);
          return (
            <li key={`${firstKey}/${string ?? 'all'}`}>
              <span>
                <strong>{where}</strong>{' '}
                {said === undefined ? (
                  <span className="faint">{say('nothing noted')}</span>
                ) : (
                  say('{loop}, twist {twist}', { loop: say(said.loopStyle), twist: say(said.twist) })
                )}
              </span>
              <button
                type="button"
                className="button quiet"
                aria-label={say('Change {what}', { what: say('the winding of {where}', { where }) })}
                onClick={() => setOpen(run)}
              >
                {say('Change')}
              </button>
            </li>
          );
        })}
      </ul>
      {open !== undefined && (
        <WindingsSheet
          runs={runs}
          run={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

/** 'A0 to C1', 'E1', 'G1·2' */
function runText({ firstKey, lastKey, string }: WindingRun, { say }: Language): string {
  if (string !== undefined) return `${noteName(firstKey)}·${string}`;
  return firstKey === lastKey
    ? noteName(firstKey)
    : say('{first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) });
}

const ofEveryString = 'every string';

function WindingsSheet({
  runs,
  run,
  onClose,
}: {
  runs: readonly WindingRun[];
  /** What is changed; undefined for a new one. */
  run: WindingRun | undefined;
  onClose: () => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const said = useSaidReason();
  const [form, setForm] = useState(() => windingForm(runs, run));
  const most = Math.max(
    ...[...job.unisons.values()]
      .filter(({ key }) => runs.some(({ firstKey, lastKey }) => firstKey <= key && key <= lastKey))
      .map(({ strings }) => strings),
  );
  return (
    <RecordSheet
      title={say('Loop and twist of wound strings')}
      keep={say('Keep the windings')}
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) =>
          recordFacts(
            context,
            id,
            windingsOf(
              job,
              { ...form, string: form.string === ofEveryString ? undefined : Number(form.string) },
              language,
            ).map((fact) => ({ ...fact, ...said })),
          ),
        )
      }
    >
      <div className="row-form">
        <TextField
          label={say('From note')}
          value={form.from}
          onChange={(from) => setForm({ ...form, from })}
        />
        <TextField label={say('To note')} value={form.to} onChange={(to) => setForm({ ...form, to })} />
      </div>
      {most > 1 && (
        <Choice
          label={say('Of which string')}
          value={form.string}
          onChange={(string) => setForm({ ...form, string })}
          options={[
            { value: ofEveryString, words: say('every string') },
            ...(['1', '2', '3'] as const)
              .slice(0, most)
              .map((value) => ({ value, words: value, spoken: say('string {string}', { string: value }) })),
          ]}
        />
      )}
      <Choice
        label={say('Loop')}
        value={form.loopStyle}
        onChange={(loopStyle) => setForm({ ...form, loopStyle })}
        options={loopStyles.map((value) => ({
          value,
          words: say(value),
          ...(value === 'unknown' ? { spoken: say('loop unknown') } : {}),
        }))}
      />
      <Choice
        label={say('Twist of the winding, seen from the loop')}
        value={form.twist}
        onChange={(twist) => setForm({ ...form, twist })}
        options={twists.map((value) => ({
          value,
          words: say(value),
          ...(value === 'unknown' ? { spoken: say('twist unknown') } : {}),
        }))}
      />
    </RecordSheet>
  );
}
