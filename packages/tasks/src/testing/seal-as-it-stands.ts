import { type Job, sealOf, type Ulid } from '@becket/journal';
import { addFacts, entriesOf, type TaskContext } from '../context.ts';

/** Seals the as-found record over everything that is there, whatever the strip check says of it. */
export async function sealAsItStands(context: TaskContext, job: Ulid): Promise<Job> {
  const seal = sealOf(await entriesOf(context, job));
  return (await addFacts(context, job, [{ kind: 'sealed', v: 1, ...seal }])).job;
}
