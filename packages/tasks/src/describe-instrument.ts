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
  const name = instrument.instrument.trim();
  if (name === '')
    throw new RangeError(
      'Cannot keep this instrument: a name is needed, none was found. Call it as you call it in the shop, such as micrometer 1.',
    );
  requireAboveZero(instrument.resolution, `the smallest step of ${name}`);
  if (instrument.stated !== undefined)
    requireAboveZero(instrument.stated.value, `the uncertainty stated of ${name}`);
  const before = (await readJob(context, job)).instruments.get(name);
  if (before !== undefined && dimensionOfUnit(before.unit) !== dimensionOfUnit(instrument.unit))
    throw new RangeError(
      `Cannot describe ${name} as showing ${instrument.unit}: it is described as showing ${before.unit}, and readings may name it. Give the other instrument a name of its own.`,
    );
  return (
    await addFacts(context, job, [{ ...instrument, instrument: name, kind: 'instrument-described', v: 1 }])
  ).job;
}

function requireAboveZero(value: number, what: string): void {
  if (Number.isFinite(value) && value > 0) return;
  throw new RangeError(
    `Cannot keep this instrument: ${what} must be a number above 0, ${value} was found. Type it in the unit the instrument shows.`,
  );
}
