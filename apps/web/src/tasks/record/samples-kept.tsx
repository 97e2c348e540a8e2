import { noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { keepInPlaceOf } from './keep-in-place-of.ts';
import { Line, PartHead } from './part-list.tsx';
import { sampleOf } from './parts-state.ts';
import { useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';

/** Pieces of the old stringing kept in labelled bags, of the whole piano. */
export function SamplesKept() {
  const { say } = useLanguage();
  const { job } = useDesk();
  const [open, setOpen] = useState<Sample | 'new'>();
  return (
    <section aria-labelledby="samples">
      <PartHead
        id="samples"
        words={say('Samples kept')}
        add={say('Add a sample')}
        onAdd={() => setOpen('new')}
      />
      <ul className="plain-list row-list">
        {job.samples.map((one) => (
          <Line
            key={one.entry}
            fact={one}
            spoken={say('sample {label}', { label: one.label })}
            onChange={() => setOpen(one)}
          >
            <strong>{one.label}</strong> {one.what},{' '}
            {one.place.key === undefined ? say('of the whole piano') : noteName(one.place.key)}
          </Line>
        ))}
      </ul>
      {open !== undefined && (
        <SampleSheet before={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </section>
  );
}

type Sample = Job['samples'][number];

function SampleSheet({ before, onClose }: { before: Sample | undefined; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const said = useSaidReason();
  const [form, setForm] = useState({
    what: before?.what ?? '',
    label: before?.label ?? '',
    note: before?.place.key === undefined ? '' : noteName(before.place.key),
  });
  return (
    <RecordSheet
      title={say('A sample kept')}
      keep={say('Keep the sample')}
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) =>
          keepInPlaceOf(context, id, sampleOf(form, language), before?.entry, said),
        )
      }
    >
      <div className="fields">
        <TextField
          label={say('What it is')}
          hint={say('such as wire of string 1, felt')}
          value={form.what}
          onChange={(what) => setForm({ ...form, what })}
        />
        <TextField
          label={say('Label on the bag')}
          value={form.label}
          onChange={(label) => setForm({ ...form, label })}
        />
        <TextField
          label={say('Note it comes from')}
          hint={say('empty for the whole piano')}
          value={form.note}
          onChange={(note) => setForm({ ...form, note })}
        />
      </div>
    </RecordSheet>
  );
}
