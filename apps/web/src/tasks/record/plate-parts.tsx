import type { Job } from '@becket/journal';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { keepInPlaceOf } from './keep-in-place-of.ts';
import { Line, PartHead } from './part-list.tsx';
import { newPlatePartForm, platePartForm, platePartInPlaceOf } from './parts-state.ts';
import { useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { SectionSelect } from './section-choice.tsx';
import { bothUnits } from './typed-length.ts';
import { unitWords } from './unit-words.ts';

/** Bars, rests and movable pieces of a section, with where they stood. */
export function PlateParts({ section }: { section: string }) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const [open, setOpen] = useState<PlatePart | 'new'>();
  return (
    <section aria-labelledby="plate-parts">
      <PartHead
        id="plate-parts"
        words={say('Bars, rests and movable pieces')}
        add={say('Add a piece')}
        onAdd={() => setOpen('new')}
      />
      <ul className="plain-list row-list">
        {job.plateParts
          .filter((one) => one.section === section)
          .map((one) => (
            <Line key={one.entry} fact={one} spoken={one.part} onChange={() => setOpen(one)}>
              <strong>{one.part}</strong>, {one.isMovable ? say('movable') : say('fixed')}
              {one.distances.map(({ from, distance_m }) => (
                <span key={from}>
                  {`; ${say('{distance} from {from}', {
                    distance: bothUnits(distance_m, unit, 'length', language),
                    from,
                  })}`}
                </span>
              ))}
              {one.note !== undefined && `; ${one.note}`}
            </Line>
          ))}
      </ul>
      {open !== undefined && (
        <PlatePartSheet
          section={section}
          before={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

type PlatePart = Job['plateParts'][number];

function PlatePartSheet({
  section,
  before,
  onClose,
}: {
  section: string;
  /** What is changed; undefined for a new one. */
  before: PlatePart | undefined;
  onClose: () => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const said = useSaidReason();
  const [form, setForm] = useState(() =>
    before === undefined ? newPlatePartForm(section) : platePartForm(before, unit, language),
  );
  const change = (index: number, part: Partial<(typeof form.distances)[number]>) =>
    setForm({
      ...form,
      distances: form.distances.map((one, at) => (at === index ? { ...one, ...part } : one)),
    });
  return (
    <RecordSheet
      title={say('A bar, a rest or a movable piece')}
      keep={say('Keep the piece')}
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) => {
          const { fact, takesBack } = platePartInPlaceOf(
            form,
            { unit, before, known: job.plateParts },
            language,
          );
          return keepInPlaceOf(context, id, fact, takesBack, said);
        })
      }
    >
      <div className="fields">
        <TextField
          label={say('Its name')}
          hint={say('your own, such as bar 2')}
          value={form.part}
          onChange={(part) => setForm({ ...form, part })}
        />
        <SectionSelect value={form.section} onChange={(section) => setForm({ ...form, section })} />
      </div>
      <label className="tick">
        <input
          type="checkbox"
          checked={form.isMovable}
          onChange={(event) => setForm({ ...form, isMovable: event.target.checked })}
        />
        {say('it can be moved or comes off')}
      </label>
      {form.distances.map((one, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: distances never change places
        <div className="row-form" key={index}>
          <TextField
            label={say('Distance {number}', { number: index + 1 })}
            hint={say('in {unit}, or with its unit', { unit: unitWords(unit, language) })}
            value={one.distance}
            onChange={(distance) => change(index, { distance })}
          />
          <TextField
            label={say('From which point ({number})', { number: index + 1 })}
            hint={say('such as the first agraffe')}
            value={one.from}
            onChange={(from) => change(index, { from })}
          />
        </div>
      ))}
      <button
        type="button"
        className="button quiet"
        onClick={() => setForm({ ...form, distances: [...form.distances, { from: '', distance: '' }] })}
      >
        {say('One more distance')}
      </button>
      <TextField
        label={say('[a remark] Note')}
        value={form.note}
        onChange={(note) => setForm({ ...form, note })}
      />
    </RecordSheet>
  );
}
