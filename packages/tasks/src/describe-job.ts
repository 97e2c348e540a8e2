import { english } from '@becket/core';
import { type Fact, firstProblem, type Job, type Ulid } from '@becket/journal';
import { z } from 'zod';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from './context.ts';
import { checkSections } from './describe-piano.ts';

/** A piano described in one piece: each part is the fact of that name, without its kind. */
const jobDescriptionSchema = z.object({
  piano: z.record(z.string(), z.unknown()).optional(),
  sections: z.array(z.record(z.string(), z.unknown())).max(60).default([]),
  unisons: z.array(z.record(z.string(), z.unknown())).max(200).default([]),
  observations: z.array(z.record(z.string(), z.unknown())).max(1000).default([]),
});

/**
 * Describes a piano in one piece: what it is, its sections, how its notes are strung, and what was seen. All or nothing.
 *
 * Throws: SyntaxError when a part does not fit its fact; RangeError when sections overlap or leave the compass;
 * RecordIsSealed after the seal.
 */
export async function describeJob(context: TaskContext, job: Ulid, description: unknown): Promise<Job> {
  const { say } = context.language ?? english;
  const parsed = jobDescriptionSchema.safeParse(description);
  if (!parsed.success)
    throw new SyntaxError(
      say('Cannot read this description of a piano: {problem}', { problem: firstProblem(parsed.error) }),
    );
  const { piano, sections, unisons, observations } = parsed.data;
  const state = await readJob(context, job);
  if (state.seal !== undefined) throw new RecordIsSealed(state.seal.at, context.language);
  // The entries are parsed before anything is stored: what does not fit its schema ends there with a sentence.
  const facts = [
    ...(piano === undefined ? [] : [{ kind: 'piano-described', v: 1, ...piano }]),
    ...sections.map((section) => ({ kind: 'section-described', v: 1, ...section })),
    ...unisons.map((run) => ({ kind: 'unisons-described', v: 1, ...run })),
    ...observations.map((seen) => ({ kind: 'observation', v: 1, ...seen })),
  ] as Fact[];
  checkSections(
    { ...state, piano: (piano ?? state.piano) as Job['piano'] },
    facts.filter((fact) => fact.kind === 'section-described'),
    context.language,
  );
  return (await addFacts(context, job, facts)).job;
}
