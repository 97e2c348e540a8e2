import { addFacts, type TaskContext } from '../context.ts';
import { openJob } from '../open-job.ts';

/** Opens the job of a grand that is one section, on the long bridge behind agraffes. Gives its id. */
export async function openOneSection(
  context: TaskContext,
  run: { readonly firstKey: number; readonly lastKey: number },
) {
  const { id } = await openJob(context, {
    title: 'one section',
    piano: { form: 'grand', ...run, referencePitch_hz: 440 },
  });
  await addFacts(context, id, [
    {
      kind: 'section-described',
      v: 1,
      section: 'treble',
      ...run,
      bridge: 'long',
      frontTermination: 'agraffe',
    },
  ]);
  return id;
}
