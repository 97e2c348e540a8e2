import { noteName } from '@becket/core';
import { absences, readingQuantities, type Standing } from '@becket/journal';
import { recordFacts, recordReadings, withdrawEntry } from '@becket/tasks';
import { type FormEvent, type ReactNode, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { Sheet } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { useObservable } from '../../parts/observable.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import {
  type LoopStyle,
  loopStyles,
  needsOf,
  newPlatePartForm,
  type PlaceQuantity,
  type PlaceReadingForm,
  placeQuantities,
  placeQuantityNames,
  placeReadingOf,
  platePartOf,
  type SoftPart,
  sampleOf,
  softPartForm,
  softPartOf,
  softParts,
  softPartWords,
  type Twist,
  twists,
  unitsOfQuantity,
  windingsOf,
} from './parts-state.ts';
import { ReasonField, useSaidReason } from './reason-field.tsx';
import './record-parts.css';
import { recordViewOf } from './record-state.ts';
import { bothUnits } from './typed-length.ts';
import { unitWords } from './unit-words.ts';

type Open =
  | { readonly is: 'soft part'; readonly part: SoftPart; readonly section: string }
  | { readonly is: 'plate part' | 'windings' | 'sample' | 'reading' };

/** What is measured section by section or here and there: soft parts, bars, windings, bearing, pins, air, samples. */
export function MeasuredParts() {
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  return (
    <section aria-labelledby="measured-parts">
      <h2 id="measured-parts">Parts measured</h2>
      <SoftParts onOpen={(part, section) => setOpen({ is: 'soft part', part, section })} />
      <PlateParts onAdd={() => setOpen({ is: 'plate part' })} />
      <Windings onAdd={() => setOpen({ is: 'windings' })} />
      <PlaceReadings onAdd={() => setOpen({ is: 'reading' })} />
      <Samples onAdd={() => setOpen({ is: 'sample' })} />
      {open?.is === 'soft part' && <SoftPartSheet part={open.part} section={open.section} onClose={close} />}
      {open?.is === 'plate part' && <PlatePartSheet onClose={close} />}
      {open?.is === 'windings' && <WindingsSheet onClose={close} />}
      {open?.is === 'reading' && <PlaceReadingSheet onClose={close} />}
      {open?.is === 'sample' && <SampleSheet onClose={close} />}
    </section>
  );
}

function PartHead({ id, words, add, onAdd }: { id: string; words: string; add: string; onAdd: () => void }) {
  return (
    <div className="part-head">
      <h3 id={id}>{words}</h3>
      <button type="button" className="button" onClick={onAdd}>
        {add}
      </button>
    </div>
  );
}

/** A line with the way to take it back. */
function Line({ fact, spoken, children }: { fact: Standing<object>; spoken: string; children: ReactNode }) {
  const { desk } = useDesk();
  const said = useSaidReason();
  return (
    <li>
      <span>{children}</span>
      <button
        type="button"
        className="button quiet"
        aria-label={`Take back ${spoken}`}
        onClick={() =>
          void desk.run((context, id) =>
            withdrawEntry(context, id, fact.entry, said.reason ?? 'taken back while recording'),
          )
        }
      >
        Take back
      </button>
    </li>
  );
}

function SoftParts({ onOpen }: { onOpen: (part: SoftPart, section: string) => void }) {
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const view = recordViewOf(desk.id);
  const section = useObservable(view).section ?? job.sections[0]?.section;
  if (section === undefined) return null;
  return (
    <section aria-labelledby="soft-parts">
      <h3 id="soft-parts">Felt, braid, punchings and bushings</h3>
      <Choice
        label="Section"
        value={section}
        onChange={(name) => view.update({ section: name })}
        options={job.sections.map((one) => ({
          value: one.section,
          words: one.section,
          spoken: `soft parts of ${one.section}`,
        }))}
      />
      <TableFrame label={`Soft parts of ${section}`}>
        <table className="table">
          <tbody>
            {softParts.map((part) => {
              const known = job.softParts.find((one) => one.section === section && one.part === part);
              const verb = known === undefined ? 'Measure' : 'Change';
              return (
                <tr key={part}>
                  <th scope="row">{part}</th>
                  <td className="seen-words">
                    {known === undefined ? (
                      <span className="faint">nothing measured</span>
                    ) : (
                      softPartWords(known, unit)
                    )}
                  </td>
                  <td className="number">
                    <button
                      type="button"
                      className="button quiet"
                      aria-label={`${verb} ${part}, section ${section}`}
                      onClick={() => onOpen(part, section)}
                    >
                      {verb}
                    </button>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </TableFrame>
    </section>
  );
}

function PlateParts({ onAdd }: { onAdd: () => void }) {
  const { job } = useDesk();
  const { unit } = useSettings();
  if (job.sections.length === 0) return null;
  return (
    <section aria-labelledby="plate-parts">
      <PartHead id="plate-parts" words="Bars, rests and movable pieces" add="Add a piece" onAdd={onAdd} />
      <ul className="plain-list">
        {job.plateParts.map((one) => (
          <Line key={one.entry} fact={one} spoken={one.part}>
            <strong>{one.part}</strong>, {one.section}, {one.isMovable ? 'movable' : 'fixed'}
            {one.distances.map(({ from, distance_m }) => (
              <span key={from}>
                ; {bothUnits(distance_m, unit, 'length')} from {from}
              </span>
            ))}
            {one.note !== undefined && `; ${one.note}`}
          </Line>
        ))}
      </ul>
    </section>
  );
}

function Windings({ onAdd }: { onAdd: () => void }) {
  const { job } = useDesk();
  const wound = [...job.unisons.values()].filter(({ winding }) => winding === 'wound');
  if (wound.length === 0) return null;
  const said = new Map(job.windings.map((one) => [one.key, `${one.loopStyle}, twist ${one.twist}`] as const));
  const groups = new Map<string, number[]>();
  for (const { key } of wound.sort((a, b) => a.key - b.key)) {
    const words = said.get(key) ?? 'nothing noted';
    groups.set(words, [...(groups.get(words) ?? []), key]);
  }
  return (
    <section aria-labelledby="windings">
      <PartHead id="windings" words="Windings: loop and twist" add="Say a winding" onAdd={onAdd} />
      <dl className="facts">
        {[...groups].map(([words, keys]) => (
          <div key={words} style={{ display: 'contents' }}>
            <dt>{words}</dt>
            <dd>{runsText(keys)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** 'A0 to C1, E1' */
function runsText(keys: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === key - 1) run[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([first, last]) => (first === last ? noteName(first) : `${noteName(first)} to ${noteName(last)}`))
    .join(', ');
}

function PlaceReadings({ onAdd }: { onAdd: () => void }) {
  const { job } = useDesk();
  const { unit } = useSettings();
  const names: readonly string[] = placeQuantityNames;
  const readings = job.readings.filter(
    ({ quantity, stage }) => stage === 'as found' && names.includes(quantity),
  );
  return (
    <section aria-labelledby="place-readings">
      <PartHead
        id="place-readings"
        words="Bearing, crown, hitch pins, spacing, pitch and air"
        add="Add a reading"
        onAdd={onAdd}
      />
      <ul className="plain-list">
        {readings.map((one) => {
          const { quantity, place, asRead, value_si, origin, span_m, loaded } = one;
          const where = place.key !== undefined ? noteName(place.key) : (place.section ?? 'the whole piano');
          const isLength = readingQuantities[quantity].dimension === 'length';
          return (
            <Line key={one.entry} fact={one} spoken={`${readingQuantities[quantity].label}, ${where}`}>
              <strong>{readingQuantities[quantity].label}</strong>, {where}
              {place.point !== undefined && `, ${place.point}`}:{' '}
              {isLength ? bothUnits(value_si, unit, 'length') : `${asRead.value} ${asRead.unit}`}
              {span_m !== undefined && `, over a span of ${bothUnits(span_m, unit, 'length')}`}
              {loaded !== undefined && `, ${loaded ? 'loaded' : 'unloaded'}`}{' '}
              <span className="faint">{origin}</span>
            </Line>
          );
        })}
      </ul>
    </section>
  );
}

function Samples({ onAdd }: { onAdd: () => void }) {
  const { job } = useDesk();
  return (
    <section aria-labelledby="samples">
      <PartHead id="samples" words="Samples kept" add="Add a sample" onAdd={onAdd} />
      <ul className="plain-list">
        {job.samples.map((one) => (
          <Line key={one.entry} fact={one} spoken={`sample ${one.label}`}>
            <strong>{one.label}</strong> {one.what},{' '}
            {one.place.key === undefined ? 'of the whole piano' : noteName(one.place.key)}
          </Line>
        ))}
      </ul>
    </section>
  );
}

/** The frame of every form here: problem, fields, reason after the seal, keep or close. */
function FormSheet({
  title,
  keep,
  onClose,
  onKeep,
  children,
}: {
  title: string;
  keep: string;
  onClose: () => void;
  onKeep: () => Promise<unknown>;
  children: ReactNode;
}) {
  const { desk } = useDesk();
  const problem = useObservable(desk.problem);
  async function submit(event: FormEvent): Promise<void> {
    event.preventDefault();
    if ((await onKeep()) !== undefined) onClose();
  }
  return (
    <Sheet title={title} isOpen onClose={onClose}>
      <form onSubmit={submit}>
        {problem !== undefined && (
          <p role="alert" className="notice bad">
            ▲ {problem}
          </p>
        )}
        {children}
        <ReasonField />
        <div className="button-row">
          <button type="submit" className="button strong">
            {keep}
          </button>
          <button type="button" className="button quiet" onClick={onClose}>
            Close
          </button>
        </div>
      </form>
    </Sheet>
  );
}

function TextField({
  label,
  hint,
  value,
  onChange,
}: {
  label: string;
  hint?: string;
  value: string;
  onChange: (value: string) => void;
}) {
  return (
    <Field label={label} hint={hint}>
      {(ids) => (
        <input {...ids} className="input" value={value} onChange={(event) => onChange(event.target.value)} />
      )}
    </Field>
  );
}

function SectionSelect({ value, onChange }: { value: string; onChange: (section: string) => void }) {
  const { job } = useDesk();
  return (
    <Field label="Section">
      {(ids) => (
        <select {...ids} className="input" value={value} onChange={(event) => onChange(event.target.value)}>
          {job.sections.map(({ section }) => (
            <option key={section} value={section}>
              {section}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

function SoftPartSheet({ part, section, onClose }: { part: SoftPart; section: string; onClose: () => void }) {
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const said = useSaidReason();
  const [form, setForm] = useState(() =>
    softPartForm(
      job.softParts.find((one) => one.section === section && one.part === part),
      unit,
    ),
  );
  const hint = `in ${unitWords(unit)}, or with its unit`;
  return (
    <FormSheet
      title={`${part}, section ${section}`}
      keep="Keep it"
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) =>
          recordFacts(context, id, [{ ...softPartOf(form, { part, section, unit }), ...said }]),
        )
      }
    >
      <Choice
        label="What was found"
        value={form.answer}
        onChange={(answer) => setForm({ ...form, answer })}
        options={[
          { value: 'known', words: 'it is there' },
          ...absences.map((value) => ({ value, words: value })),
        ]}
      />
      {form.answer === 'known' ? (
        <div className="fields">
          <TextField
            label="Thickness"
            hint={hint}
            value={form.thickness}
            onChange={(thickness) => setForm({ ...form, thickness })}
          />
          <TextField
            label="Length"
            hint={hint}
            value={form.length}
            onChange={(length) => setForm({ ...form, length })}
          />
          <TextField
            label="Width"
            hint={hint}
            value={form.width}
            onChange={(width) => setForm({ ...form, width })}
          />
          <TextField label="Colour" value={form.colour} onChange={(colour) => setForm({ ...form, colour })} />
          <TextField
            label="Where it lies"
            value={form.where}
            onChange={(where) => setForm({ ...form, where })}
          />
        </div>
      ) : (
        <TextField
          label="Why, if there is something to say"
          value={form.why}
          onChange={(why) => setForm({ ...form, why })}
        />
      )}
    </FormSheet>
  );
}

function PlatePartSheet({ onClose }: { onClose: () => void }) {
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const said = useSaidReason();
  const [form, setForm] = useState(() => newPlatePartForm(job.sections[0]?.section ?? ''));
  const change = (index: number, part: Partial<(typeof form.distances)[number]>) =>
    setForm({
      ...form,
      distances: form.distances.map((one, at) => (at === index ? { ...one, ...part } : one)),
    });
  return (
    <FormSheet
      title="A bar, a rest or a movable piece"
      keep="Keep the piece"
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) => recordFacts(context, id, [{ ...platePartOf(form, unit), ...said }]))
      }
    >
      <div className="fields">
        <TextField
          label="Its name"
          hint="your own, such as bar 2"
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
        it can be moved or comes off
      </label>
      {form.distances.map((one, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: distances never change places
        <div className="row-form" key={index}>
          <TextField
            label={`Distance ${index + 1}`}
            hint={`in ${unitWords(unit)}, or with its unit`}
            value={one.distance}
            onChange={(distance) => change(index, { distance })}
          />
          <TextField
            label={`From which point (${index + 1})`}
            hint="such as the first agraffe"
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
        One more distance
      </button>
      <TextField label="Note" value={form.note} onChange={(note) => setForm({ ...form, note })} />
    </FormSheet>
  );
}

function WindingsSheet({ onClose }: { onClose: () => void }) {
  const { desk, job } = useDesk();
  const said = useSaidReason();
  const keys = [...job.unisons.values()]
    .filter(({ winding }) => winding === 'wound')
    .map(({ key }) => key)
    .sort((a, b) => a - b);
  const [form, setForm] = useState<{ from: string; to: string; loopStyle: LoopStyle; twist: Twist }>({
    from: keys[0] === undefined ? '' : noteName(keys[0]),
    to: keys.at(-1) === undefined ? '' : noteName(keys.at(-1)!),
    loopStyle: 'single loop',
    twist: 'right',
  });
  return (
    <FormSheet
      title="Loop and twist of wound strings"
      keep="Keep the windings"
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) =>
          recordFacts(
            context,
            id,
            windingsOf(job, form).map((fact) => ({ ...fact, ...said })),
          ),
        )
      }
    >
      <div className="row-form">
        <TextField label="From note" value={form.from} onChange={(from) => setForm({ ...form, from })} />
        <TextField label="To note" value={form.to} onChange={(to) => setForm({ ...form, to })} />
      </div>
      <Choice
        label="Loop"
        value={form.loopStyle}
        onChange={(loopStyle) => setForm({ ...form, loopStyle })}
        options={loopStyles.map((value) => ({
          value,
          words: value,
          ...(value === 'unknown' ? { spoken: 'loop unknown' } : {}),
        }))}
      />
      <Choice
        label="Twist of the winding, seen from the loop"
        value={form.twist}
        onChange={(twist) => setForm({ ...form, twist })}
        options={twists.map((value) => ({
          value,
          words: value,
          ...(value === 'unknown' ? { spoken: 'twist unknown' } : {}),
        }))}
      />
    </FormSheet>
  );
}

function PlaceReadingSheet({ onClose }: { onClose: () => void }) {
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const said = useSaidReason();
  const [form, setForm] = useState<PlaceReadingForm>({
    quantity: 'bearing-rise',
    value: '',
    unit,
    note: '',
    section: job.sections[0]?.section ?? '',
    point: '',
    span: '',
    loaded: 'not said',
  });
  const needs = needsOf(form.quantity);
  const { at } = placeQuantities[form.quantity];
  return (
    <FormSheet
      title="A reading here and there"
      keep="Keep the reading"
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) =>
          recordReadings(context, id, [{ ...placeReadingOf(form, unit), ...said }]),
        )
      }
    >
      <Field label="What is read">
        {(ids) => (
          <select
            {...ids}
            className="input"
            value={form.quantity}
            onChange={(event) => {
              const quantity = event.target.value as PlaceQuantity;
              setForm({ ...form, quantity, unit: unitsOfQuantity(quantity, unit)[0]! });
            }}
          >
            {placeQuantityNames.map((name) => (
              <option key={name} value={name}>
                {readingQuantities[name].label}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div className="row-form">
        <TextField label="Value" value={form.value} onChange={(value) => setForm({ ...form, value })} />
        <Field label="Unit">
          {(ids) => (
            <select
              {...ids}
              className="input"
              value={form.unit}
              onChange={(event) => setForm({ ...form, unit: event.target.value as typeof form.unit })}
            >
              {unitsOfQuantity(form.quantity, unit).map((one) => (
                <option key={one} value={one}>
                  {one}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <div className="fields">
        {at === 'note' && (
          <TextField
            label="Note"
            hint="such as F#3"
            value={form.note}
            onChange={(note) => setForm({ ...form, note })}
          />
        )}
        {at === 'section' && (
          <SectionSelect value={form.section} onChange={(section) => setForm({ ...form, section })} />
        )}
        <TextField
          label="Point"
          hint="where on it, if that matters"
          value={form.point}
          onChange={(point) => setForm({ ...form, point })}
        />
        {needs === 'span and load' && (
          <TextField
            label="Span it was read over"
            hint={`in ${unitWords(unit)}, or with its unit`}
            value={form.span}
            onChange={(span) => setForm({ ...form, span })}
          />
        )}
      </div>
      {needs !== undefined && (
        <Choice
          label="Were the strings pressing on the board?"
          value={form.loaded}
          onChange={(loaded) => setForm({ ...form, loaded })}
          options={(['not said', 'loaded', 'unloaded'] as const).map((value) => ({ value, words: value }))}
        />
      )}
    </FormSheet>
  );
}

function SampleSheet({ onClose }: { onClose: () => void }) {
  const { desk } = useDesk();
  const said = useSaidReason();
  const [form, setForm] = useState({ what: '', label: '', note: '' });
  return (
    <FormSheet
      title="A sample kept"
      keep="Keep the sample"
      onClose={onClose}
      onKeep={() =>
        desk.run(async (context, id) => recordFacts(context, id, [{ ...sampleOf(form), ...said }]))
      }
    >
      <div className="fields">
        <TextField
          label="What it is"
          hint="such as wire of string 1, felt"
          value={form.what}
          onChange={(what) => setForm({ ...form, what })}
        />
        <TextField
          label="Label on the bag"
          value={form.label}
          onChange={(label) => setForm({ ...form, label })}
        />
        <TextField
          label="Note it comes from"
          hint="empty for the whole piano"
          value={form.note}
          onChange={(note) => setForm({ ...form, note })}
        />
      </div>
    </FormSheet>
  );
}
