import { english, type Language } from '@becket/core';
import type { FactOf, Job, Ulid } from '@becket/journal';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from './context.ts';

type Described<Kind extends 'piano-described' | 'section-described' | 'unisons-described'> = Omit<
  FactOf<Kind>,
  'kind' | 'v'
>;

/** Says what instrument this is. A later description stands in place of an earlier one. */
export async function describePiano(
  context: TaskContext,
  job: Ulid,
  piano: Described<'piano-described'>,
): Promise<Job> {
  return (await addFacts(context, job, [{ kind: 'piano-described', v: 1, ...piano }])).job;
}

/**
 * Describes sections of the piano; each stands in place of an earlier section of the same name.
 *
 * Throws: RangeError when a section overlaps another or leaves the compass; nothing is stored then.
 */
export async function describeSections(
  context: TaskContext,
  job: Ulid,
  sections: readonly Described<'section-described'>[],
): Promise<Job> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  checkSections(state, sections, language);
  requireReasonAfterSeal(state, sections, language);
  return (
    await addFacts(
      context,
      job,
      sections.map((section) => ({ kind: 'section-described', v: 1, ...section })),
    )
  ).job;
}

/** Describes how runs of notes are strung. Throws: RangeError when a run leaves the compass; nothing is stored then. */
export async function describeUnisons(
  context: TaskContext,
  job: Ulid,
  runs: readonly Described<'unisons-described'>[],
): Promise<Job> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  for (const { firstKey, lastKey } of runs) {
    const what = language.say('the notes {first} to {last}', { first: firstKey, last: lastKey });
    requireInCompass(state, { firstKey, lastKey, what }, language);
  }
  requireReasonAfterSeal(state, runs, language);
  return (
    await addFacts(
      context,
      job,
      runs.map((run) => ({ kind: 'unisons-described', v: 1, ...run })),
    )
  ).job;
}

/** Throws a RangeError when these sections, put in place, would overlap or leave the compass. */
export function checkSections(
  state: Job,
  sections: readonly Pick<Described<'section-described'>, 'section' | 'firstKey' | 'lastKey'>[],
  language: Language = english,
): void {
  const { say } = language;
  const byName = new Map<string, { section: string; firstKey: number; lastKey: number }>(
    state.sections.map((section) => [section.section, section]),
  );
  for (const section of sections) {
    const what = say("section '{section}'", { section: section.section });
    requireInCompass(state, { ...section, what }, language);
    byName.set(section.section, section);
  }
  const inOrder = [...byName.values()].sort((a, b) => a.firstKey - b.firstKey);
  for (let index = 1; index < inOrder.length; index += 1) {
    const lower = inOrder[index - 1]!;
    const upper = inOrder[index]!;
    if (upper.firstKey <= lower.lastKey) {
      throw new RangeError(
        say(
          "Cannot keep these sections as '{lower}' (keys {lowerFirst} to {lowerLast}) and '{upper}' (keys {upperFirst} to {upperLast}) overlap: each note belongs to one section. Change where one of them begins or ends.",
          {
            lower: lower.section,
            lowerFirst: lower.firstKey,
            lowerLast: lower.lastKey,
            upper: upper.section,
            upperFirst: upper.firstKey,
            upperLast: upper.lastKey,
          },
        ),
      );
    }
  }
}

function requireInCompass(
  { piano }: Job,
  { firstKey, lastKey, what }: { readonly firstKey: number; readonly lastKey: number; readonly what: string },
  { say }: Language,
): void {
  if (piano === undefined) return;
  if (firstKey < piano.firstKey || lastKey > piano.lastKey) {
    throw new RangeError(
      say(
        "Cannot keep {what} as it leaves the compass: keys {first} to {last} are needed, {foundFirst} to {foundLast} were found. Correct the section, or the piano's compass.",
        { what, first: piano.firstKey, last: piano.lastKey, foundFirst: firstKey, foundLast: lastKey },
      ),
    );
  }
}

function requireReasonAfterSeal(
  state: Job,
  facts: readonly { reason?: string | undefined }[],
  language: Language,
): void {
  if (state.seal !== undefined && facts.some((fact) => fact.reason === undefined))
    throw new RecordIsSealed(state.seal.at, language);
}
