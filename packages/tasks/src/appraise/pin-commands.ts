import { english, inMillimetres, type Language, metres, noteName } from '@becket/core';
import { type FactOf, type Job, siFromRead, type Ulid } from '@becket/journal';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { requireNoteOnPiano, requireStringOnPiano } from '../on-this-piano.ts';
import { pinName } from './pin-field.ts';

export type PinPolicyToSet = Omit<FactOf<'pin-policy-set'>, 'kind' | 'v'>;
export type PinLimitsToSet = Omit<FactOf<'pin-limits-set'>, 'kind' | 'v'>;
export type PinRemedyToChoose = Omit<FactOf<'pin-remedy'>, 'kind' | 'v'>;
export type PinsToLog = Omit<FactOf<'pins-driven'>, 'kind' | 'v'>;
/** A test pin as a person gives it: the torque in the unit it was read in, with no string on the pin. */
export interface TestPinToRecord
  extends Pick<FactOf<'test-pin'>, 'pinDiameter_m' | 'pinLength_m' | 'feel' | 'note'> {
  readonly key: number;
  readonly string: number;
  readonly torque: FactOf<'test-pin'>['asRead'];
}

/**
 * Sets the rule for going up in pin size, for this job.
 * Throws: RangeError when sizes are not in order or named twice, or the two torque figures are the wrong way round. Nothing is
 * stored then.
 */
export async function setPinPolicy(context: TaskContext, job: Ulid, policy: PinPolicyToSet): Promise<Job> {
  const language = context.language ?? english;
  const { say, fixed } = language;
  const { sizes, firmTorque_n_m, veryLooseTorque_n_m } = policy;
  const labels = sizes.map(({ label }) => label);
  const twice = labels.find((label, index) => labels.indexOf(label) !== index);
  if (twice !== undefined)
    throw new RangeError(
      say('Cannot keep this rule: each size is needed once, {size} was found twice. Take one of them out.', {
        size: twice,
      }),
    );
  const falling = sizes.find((size, index) => size.diameter_m <= (sizes[index - 1]?.diameter_m ?? 0));
  if (falling !== undefined)
    throw new RangeError(
      say(
        'Cannot keep this rule: sizes from small to large are needed, {size} ({diameter}) was found after a larger one. Put them in order.',
        { size: falling.label, diameter: millimetresText(falling.diameter_m, language) },
      ),
    );
  if (veryLooseTorque_n_m >= firmTorque_n_m)
    throw new RangeError(
      say(
        'Cannot keep this rule: a very loose torque under the firm one is needed, {loose} and {firm} N·m were found. Change one of them.',
        { loose: fixed(veryLooseTorque_n_m, 1), firm: fixed(firmTorque_n_m, 1) },
      ),
    );
  return add(context, job, { kind: 'pin-policy-set', v: 1, ...policy });
}

/**
 * Says what block and plate allow, as a whole: what is left out is unknown afterwards.
 * Throws: RangeError when nothing is said, or the plate hole is smaller than the largest pin. Nothing is stored then.
 */
export async function setPinLimits(context: TaskContext, job: Ulid, limits: PinLimitsToSet): Promise<Job> {
  const language = context.language ?? english;
  const { say } = language;
  if (Object.values(limits).every((value) => value === undefined))
    throw new RangeError(
      say('Cannot keep these limits: at least one figure is needed, none was found. Give what was measured.'),
    );
  const { largestDiameter_m, plateHoleDiameter_m } = limits;
  if (
    largestDiameter_m !== undefined &&
    plateHoleDiameter_m !== undefined &&
    plateHoleDiameter_m < largestDiameter_m
  )
    throw new RangeError(
      say(
        'Cannot keep these limits: a plate hole at least as wide as the largest pin is needed, {hole} and {pin} were found. Measure the hole again, or choose a smaller pin.',
        {
          hole: millimetresText(plateHoleDiameter_m, language),
          pin: millimetresText(largestDiameter_m, language),
        },
      ),
    );
  return add(context, job, { kind: 'pin-limits-set', v: 1, ...limits });
}

/**
 * Keeps a test pin: what a pin of known size gives in one hole, with no string on it.
 * Throws: RangeError when the string is not on this piano, or the torque is not above 0. Nothing is stored then.
 */
export async function recordTestPin(
  context: TaskContext,
  job: Ulid,
  { key, string, torque, ...rest }: TestPinToRecord,
): Promise<Job> {
  const state = await readJob(context, job);
  const language = context.language ?? english;
  const { say, plain } = language;
  requireStringOnPiano(state, { key, string, what: say('this test pin') }, language);
  const torque_n_m = siFromRead(torque.value, torque.unit);
  if (!(torque_n_m > 0))
    throw new RangeError(
      say(
        'Cannot keep this test pin: a torque above 0 is needed, {found} was found. A pin that turns freely needs a larger one; note it there.',
        { found: `${plain(torque.value)} ${torque.unit}` },
      ),
    );
  return add(context, job, {
    kind: 'test-pin',
    v: 1,
    place: { key, string },
    torque_n_m,
    asRead: torque,
    ...rest,
  });
}

/**
 * Says what one pin needs of its own: a larger pin, a bushing, a plug; 'as the rest' takes it back.
 * Throws: RangeError when the string is not on this piano, a larger pin has no size, or 'as the rest' has one. Nothing is
 * stored then.
 */
export async function choosePinRemedy(
  context: TaskContext,
  job: Ulid,
  remedy: PinRemedyToChoose,
): Promise<Job> {
  const state = await readJob(context, job);
  const language = context.language ?? english;
  const { say } = language;
  requireStringOnPiano(state, { ...remedy, what: say('what this pin needs') }, language);
  const name = pinName(remedy, language);
  if (remedy.remedy === 'larger pin' && remedy.pinDiameter_m === undefined)
    throw new RangeError(
      say('Cannot keep a larger pin for {name}: its size is needed, none was found. Choose the size.', {
        name,
      }),
    );
  if (remedy.remedy === 'as the rest' && remedy.pinDiameter_m !== undefined)
    throw new RangeError(
      say(
        'Cannot put {name} back with the rest: no size of its own is needed, {found} was found. Leave the size out.',
        { name, found: millimetresText(remedy.pinDiameter_m, language) },
      ),
    );
  return add(context, job, { kind: 'pin-remedy', v: 1, ...remedy });
}

/**
 * Logs pins that were driven, from one note to another.
 * Throws: RangeError when a note is not on this piano or the first lies above the last. Nothing is stored then.
 */
export async function logPinsDriven(context: TaskContext, job: Ulid, pins: PinsToLog): Promise<Job> {
  const state = await readJob(context, job);
  const language = context.language ?? english;
  const { say } = language;
  for (const key of [pins.firstKey, pins.lastKey])
    requireNoteOnPiano(state, { key, what: say('these pins') }, language);
  if (pins.firstKey > pins.lastKey)
    throw new RangeError(
      say(
        'Cannot log these pins: the first note at or below the last is needed, {first} to {last} was found. Change them over.',
        { first: noteName(pins.firstKey), last: noteName(pins.lastKey) },
      ),
    );
  return add(context, job, { kind: 'pins-driven', v: 1, ...pins });
}

async function add(
  context: TaskContext,
  job: Ulid,
  fact: FactOf<'pin-policy-set' | 'pin-limits-set' | 'test-pin' | 'pin-remedy' | 'pins-driven'>,
): Promise<Job> {
  return (await addFacts(context, job, [fact])).job;
}

const millimetresText = (value_m: number, { fixed }: Language): string =>
  `${fixed(inMillimetres(metres(value_m)), 2)} mm`;
