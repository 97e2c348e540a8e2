import { english, noteName } from '@becket/core';
import type { FactOf, Job, Ulid } from '@becket/journal';

export { type ChangeOrderTotals, changeOrderTotals } from '@becket/papers';

import { addFacts, readJob, type TaskContext } from './context.ts';

/** Damage as a person gives it. */
export type DamageToRecord = Omit<FactOf<'damage-found'>, 'kind' | 'v'>;

/**
 * Notes damage that came to light after the strip; each is a line of the change order.
 *
 * Throws: RangeError before the record is sealed, when the place is not on this piano, or when the photo is not one of
 * this job. Nothing is stored then.
 */
export async function recordDamage(context: TaskContext, job: Ulid, damage: DamageToRecord): Promise<Job> {
  const { say } = context.language ?? english;
  const state = await readJob(context, job);
  if (state.seal === undefined)
    throw new RangeError(
      say(
        'Cannot note this as found after the strip: a sealed as-found record is needed, it is not sealed yet. Until then note it under Seen.',
      ),
    );
  const { key, section } = damage.place;
  const { piano } = state;
  if (piano !== undefined && key !== undefined && (key < piano.firstKey || key > piano.lastKey))
    throw new RangeError(
      say('Cannot note damage at {note}: this piano goes from {first} to {last}. Check the note.', {
        note: noteName(key),
        first: noteName(piano.firstKey),
        last: noteName(piano.lastKey),
      }),
    );
  if (section !== undefined && !state.sections.some((one) => one.section === section))
    throw new RangeError(
      say(
        "Cannot note damage in the section '{section}': this piano has {sections}. Choose one of them, or the whole piano.",
        {
          section,
          sections: state.sections.map((one) => one.section).join(', ') || say('no section described'),
        },
      ),
    );
  if (damage.photo !== undefined && !state.photos.some(({ digest }) => digest === damage.photo))
    throw new RangeError(
      say(
        'Cannot tie that photo to the damage: a photo of this job is needed, none of that name was found. Add the photo first.',
      ),
    );
  return (await addFacts(context, job, [{ kind: 'damage-found', v: 1, ...damage }])).job;
}
