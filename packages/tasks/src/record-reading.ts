import { english, type Language, noteName } from '@becket/core';
import {
  dimensionOfUnit,
  type FactOf,
  factMeant,
  isAsFoundFact,
  type Job,
  type Place,
  quantitiesOverSpan,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  siFromRead,
  type Ulid,
  unitsForDimension,
} from '@becket/journal';
import { addFacts, entriesOf, RecordIsSealed, readJob, type TaskContext } from './context.ts';

/** A reading as a person gives it: a value in the unit it was read in. */
export interface ReadingToRecord {
  readonly quantity: ReadingQuantityName;
  readonly place: Place;
  readonly value: number;
  readonly unit: ReadUnit;
  readonly origin?: FactOf<'reading'>['origin'];
  readonly stage?: FactOf<'reading'>['stage'];
  readonly condition?: FactOf<'reading'>['condition'];
  readonly instrument?: string | undefined;
  /** For bearing and crown: the span the value was read over [m], and whether the strings were pressing on the board. */
  readonly span_m?: number | undefined;
  readonly loaded?: boolean | undefined;
  /** For torque: what the hand felt. */
  readonly feel?: FactOf<'reading'>['feel'] | undefined;
  /** The entry this reading corrects; then a reason is needed. */
  readonly replaces?: Ulid | undefined;
  readonly reason?: string | undefined;
}

/**
 * The fact of a reading, checked against what is possible.
 * Throws: RangeError when the unit does not fit the quantity, the value is impossible, the note is not on this piano, or
 * bearing or crown come without their span and load, or the instrument measures something else.
 */
export function readingFact(
  state: Job,
  reading: ReadingToRecord,
  language: Language = english,
): FactOf<'reading'> {
  const { say, plain } = language;
  const { quantity, place, value, unit } = reading;
  const { label, dimension, possible } = readingQuantities[quantity];
  const units = unitsForDimension(dimension);
  if (!units.includes(unit)) {
    throw new RangeError(
      say("Cannot record this {quantity}: a unit of {units} is needed, '{found}' was found.", {
        quantity: say(label),
        units: units.join(', '),
        found: unit,
      }),
    );
  }
  const value_si = siFromRead(value, unit);
  if (!Number.isFinite(value_si) || value_si < possible[0] || value_si > possible[1]) {
    throw new RangeError(
      say(
        'Cannot record this {quantity}: a value from {low} to {high} {unit} is needed, {found} {unit} was found. Check the unit and the decimal mark.',
        {
          quantity: say(label),
          low: plain(asIn(possible[0], unit)),
          high: plain(asIn(possible[1], unit)),
          unit,
          found: plain(value),
        },
      ),
    );
  }
  requireOnPiano(state, place, language);
  requireFittingInstrument(state, reading, language);
  const { origin = 'measured', stage = 'as found', condition, instrument, replaces, reason } = reading;
  const { span_m, loaded, feel } = reading;
  requireSpanAndLoad({ quantity, span_m, loaded }, language);
  return {
    kind: 'reading',
    v: 1,
    quantity,
    place,
    value_si,
    asRead: { value, unit },
    origin,
    stage,
    ...(condition === undefined ? {} : { condition }),
    ...(instrument === undefined ? {} : { instrument }),
    ...(span_m === undefined ? {} : { span_m }),
    ...(loaded === undefined ? {} : { loaded }),
    ...(feel === undefined ? {} : { feel }),
    ...(replaces === undefined ? {} : { replaces }),
    ...(reason === undefined ? {} : { reason }),
  };
}

/** An SI value in the unit it is asked for in, with no more digits than tell it apart. */
const asIn = (value_si: number, unit: ReadUnit): number =>
  Number((value_si / siFromRead(1, unit)).toPrecision(3));

/** An instrument of another kind would lend the reading a step that is none. */
function requireFittingInstrument(
  { instruments }: Job,
  { quantity, instrument }: ReadingToRecord,
  { say }: Language,
): void {
  const described = instrument === undefined ? undefined : instruments.get(instrument);
  const { dimension, label } = readingQuantities[quantity];
  if (described === undefined || dimensionOfUnit(described.unit) === dimension) return;
  throw new RangeError(
    say(
      'Cannot record this {quantity}: an instrument that shows a {dimension} is needed, {instrument} shows {unit}. Choose another instrument, or none.',
      {
        quantity: say(label),
        dimension: say(dimension),
        instrument: described.instrument,
        unit: described.unit,
      },
    ),
  );
}

/** Older journals hold such readings without their span: those are still read, new ones are refused. */
function requireSpanAndLoad(
  { quantity, span_m, loaded }: Pick<ReadingToRecord, 'quantity' | 'span_m' | 'loaded'>,
  { say, plain }: Language,
): void {
  if (!quantitiesOverSpan.includes(quantity) || (span_m !== undefined && span_m > 0 && loaded !== undefined))
    return;
  const found =
    span_m === undefined && loaded === undefined
      ? say('neither')
      : loaded === undefined
        ? say('the span alone')
        : span_m === undefined
          ? say('the load alone')
          : say('a span of {span} m', { span: plain(span_m) });
  throw new RangeError(
    say(
      'Cannot record this {quantity}: the span it was read over and whether the board was loaded are needed, {found} was found. Give the span, and loaded or unloaded.',
      { quantity: say(readingQuantities[quantity].label), found },
    ),
  );
}

/** Records readings, all or none. Throws as `readingFact` does; after the seal a reason is needed. */
export async function recordReadings(
  context: TaskContext,
  job: Ulid,
  readings: readonly ReadingToRecord[],
): Promise<{ job: Job; entries: readonly Ulid[] }> {
  const state = await readJob(context, job);
  const facts = readings.map((reading) => readingFact(state, reading, context.language));
  if (
    state.seal !== undefined &&
    facts.some((fact) => fact.stage === 'as found' && fact.reason === undefined)
  ) {
    throw new RecordIsSealed(state.seal.at, context.language);
  }
  const { entries, job: changed } = await addFacts(context, job, facts);
  return { job: changed, entries: entries.map((entry) => entry.id) };
}

/** Says that a quantity could not be read (unknown), is not there (none), or does not apply at a place. */
export async function recordAbsence(
  context: TaskContext,
  job: Ulid,
  absence: Omit<FactOf<'reading-absent'>, 'kind' | 'v'>,
): Promise<Job> {
  return addAsFound(context, job, { kind: 'reading-absent', v: 1, ...absence });
}

/** Notes a thing of the as-found record in words, or what was found instead of it. */
export async function recordObservation(
  context: TaskContext,
  job: Ulid,
  observation: Omit<FactOf<'observation'>, 'kind' | 'v'>,
): Promise<Job> {
  return addAsFound(context, job, { kind: 'observation', v: 1, ...observation });
}

/** Takes an entry out of the state, with a reason; the entry stays in the journal. */
export async function withdrawEntry(
  context: TaskContext,
  job: Ulid,
  entry: Ulid,
  reason: string,
): Promise<Job> {
  return (await addFacts(context, job, [{ kind: 'withdrawn', v: 1, entry, reason }])).job;
}

/**
 * Withdraws an entry for the reason that somebody gave; before the seal the program may say it for her.
 * Throws: RecordIsSealed when the entry is part of the sealed record and no reason was given. Nothing is stored then.
 */
export async function takeBackEntry(
  context: TaskContext,
  job: Ulid,
  entry: Ulid,
  { reason = '', otherwise }: { readonly reason?: string | undefined; readonly otherwise: string },
): Promise<Job> {
  const given = reason.trim();
  const { seal } = await readJob(context, job);
  if (given === '' && seal !== undefined) {
    const facts = new Map((await entriesOf(context, job)).map(({ id, fact }) => [id, fact]));
    const fact = factMeant({ kind: 'withdrawn', v: 1, entry, reason: otherwise }, (id) => facts.get(id));
    if (fact !== undefined && isAsFoundFact(fact)) throw new RecordIsSealed(seal.at, context.language);
  }
  return withdrawEntry(context, job, entry, given || otherwise);
}

async function addAsFound(
  context: TaskContext,
  job: Ulid,
  fact: FactOf<'reading-absent'> | FactOf<'observation'>,
): Promise<Job> {
  const state = await readJob(context, job);
  requireOnPiano(state, fact.place, context.language ?? english);
  if (state.seal !== undefined && fact.reason === undefined)
    throw new RecordIsSealed(state.seal.at, context.language);
  return (await addFacts(context, job, [fact])).job;
}

function requireOnPiano({ piano }: Job, { key }: Place, { say }: Language): void {
  if (piano === undefined || key === undefined) return;
  if (key < piano.firstKey || key > piano.lastKey) {
    throw new RangeError(
      say(
        "Cannot record at {note}: this piano goes from {first} to {last}. Check the note, or the piano's compass.",
        { note: noteName(key), first: noteName(piano.firstKey), last: noteName(piano.lastKey) },
      ),
    );
  }
}
