import { english, type Language } from '@becket/core';
import { dimensionOfUnit, type FactOf, type Job, type Ulid } from '@becket/journal';
import { addFacts, readJob, type TaskContext } from './context.ts';

export type InstrumentToDescribe = Omit<FactOf<'instrument-described'>, 'kind' | 'v'>;

/**
 * Describes a measuring tool of the shop, or describes it anew: readings that name it are worth what it can tell.
 *
 * Throws: RangeError without a name, or when its step or what is stated of it is no number above zero; when readings
 * of another kind name it already. Nothing is stored then.
 */
export async function describeInstrument(
  context: TaskContext,
  job: Ulid,
  instrument: InstrumentToDescribe,
): Promise<Job> {
  const language = context.language ?? english;
  const { say } = language;
  const name = instrument.instrument.trim();
  if (name === '')
    throw new RangeError(
      say(
        'Cannot keep this instrument: a name is needed, none was found. Call it as you call it in the shop, such as micrometer 1.',
      ),
    );
  requireAboveZero(
    { value: instrument.resolution, what: say('the smallest step of {name}', { name }) },
    language,
  );
  if (instrument.stated !== undefined)
    requireAboveZero(
      { value: instrument.stated.value, what: say('the uncertainty stated of {name}', { name }) },
      language,
    );
  const before = (await readJob(context, job)).instruments.get(name);
  if (before !== undefined && dimensionOfUnit(before.unit) !== dimensionOfUnit(instrument.unit))
    throw new RangeError(
      say(
        'Cannot describe {name} as showing {unit}: it is described as showing {before}, and readings may name it. Give the other instrument a name of its own.',
        { name, unit: instrument.unit, before: before.unit },
      ),
    );
  return (
    await addFacts(context, job, [{ ...instrument, instrument: name, kind: 'instrument-described', v: 1 }])
  ).job;
}

function requireAboveZero(
  { value, what }: { readonly value: number; readonly what: string },
  { say, plain }: Language,
): void {
  if (Number.isFinite(value) && value > 0) return;
  throw new RangeError(
    say(
      'Cannot keep this instrument: {what} must be a number above 0, {found} was found. Type it in the unit the instrument shows.',
      { what, found: plain(value) },
    ),
  );
}
