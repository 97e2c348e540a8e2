import { grouped, type Language, noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import { recordFacts } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { PartHead } from './part-list.tsx';
import { type LoopStyle, loopStyles, type Twist, twists, windingsOf } from './parts-state.ts';
import { useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';

/** Loop and twist of the wound strings of a section, in runs that are alike. */
export function WindingsSaid({ section }: { section: string }) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const [isOpen, setOpen] = useState(false);
  const wound = woundKeys(job, section);
  if (wound.length === 0) return null;
  const said = new Map(
    job.windings.map(
      (one) =>
        [one.key, say('{loop}, twist {twist}', { loop: say(one.loopStyle), twist: say(one.twist) })] as const,
    ),
  );
  const groups = grouped(wound, (key) => said.get(key) ?? say('nothing noted'));
  return (
    <section aria-labelledby="windings">
      <PartHead
        id="windings"
        words={say('Windings: loop and twist')}
        add={say('Say a winding')}
        onAdd={() => setOpen(true)}
      />
      <dl className="facts">
        {[...groups].map(([words, keys]) => (
          <div key={words} style={{ display: 'contents' }}>
            <dt>{words}</dt>
            <dd>{runsText(keys, language)}</dd>
          </div>
        ))}
      </dl>
      {isOpen && <WindingsSheet section={section} onClose={() => setOpen(false)} />}
    </section>
  );
}

/** The notes of a section with wound strings, bass to treble. */
function woundKeys(job: Job, section: string): number[] {
  const range = job.sections.find((one) => one.section === section);
  return [...job.unisons.values()]
    .filter(
      ({ key, winding }) =>
        winding === 'wound' && range !== undefined && range.firstKey <= key && key <= range.lastKey,
    )
    .map(({ key }) => key)
    .sort((a, b) => a - b);
}

/** 'A0 to C1, E1' */
function runsText(keys: readonly number[], { say }: Language): string {
  const runs: [number, number][] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === key - 1) run[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([first, last]) =>
      first === last
        ? noteName(first)
        : say('{first} to {last}', { first: noteName(first), last: noteName(last) }),
    )
    .join(', ');
}

function WindingsSheet({ section, onClose }: { section: string; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const said = useSaidReason();
  const keys = woundKeys(job, section);
  const [form, setForm] = useState<{ from: string; to: string; loopStyle: LoopStyle; twist: Twist }>({
    from: keys[0] === undefined ? '' : noteName(keys[0]),
    to: keys.at(-1) === undefined ? '' : noteName(keys.at(-1)!),
    loopStyle: 'single loop',
    twist: 'right',
  });
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
            windingsOf(job, form, language).map((fact) => ({ ...fact, ...said })),
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
