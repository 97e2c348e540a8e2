import { english, type Language, noteName } from '@becket/core';
import type { FactOf, Job, Ulid } from '@becket/journal';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from './context.ts';

type Described<Kind extends 'piano-described' | 'section-described' | 'unisons-described'> = Omit<
  FactOf<Kind>,
  'kind' | 'v'
>;

/**
 * Says what instrument this is. A later description stands in place of an earlier one.
 *
 * Throws: RangeError when a changed compass leaves out a section or a reading; RecordIsSealed when the record is sealed and
 * no reason is given. Nothing is stored then.
 */
export async function describePiano(
  context: TaskContext,
  job: Ulid,
  piano: Described<'piano-described'>,
): Promise<Job> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  requireReasonAfterSeal(state, [piano], language);
  requireNothingOutside(state, piano, language);
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
    const what = language.say('the notes {first} to {last}', {
      first: noteName(firstKey),
      last: noteName(lastKey),
    });
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
          "Cannot keep these sections as '{lower}' ({lowerFirst} to {lowerLast}) and '{upper}' ({upperFirst} to {upperLast}) overlap: each note belongs to one section. Change where one of them begins or ends.",
          {
            lower: lower.section,
            lowerFirst: noteName(lower.firstKey),
            lowerLast: noteName(lower.lastKey),
            upper: upper.section,
            upperFirst: noteName(upper.firstKey),
            upperLast: noteName(upper.lastKey),
          },
        ),
      );
    }
  }
}

function requireNothingOutside(
  { piano: before, sections, readings }: Job,
  { firstKey, lastKey }: { readonly firstKey: number; readonly lastKey: number },
  { say }: Language,
): void {
  if (before === undefined || (before.firstKey === firstKey && before.lastKey === lastKey)) return;
  const compass = { first: noteName(firstKey), last: noteName(lastKey) };
  const section = sections.find((one) => one.firstKey < firstKey || one.lastKey > lastKey);
  if (section !== undefined)
    throw new RangeError(
      say(
        "Cannot keep the compass {first} to {last}: it must hold every section, and the section '{section}' goes from {from} to {to}. Change that section first, or the compass.",
        {
          ...compass,
          section: section.section,
          from: noteName(section.firstKey),
          to: noteName(section.lastKey),
        },
      ),
    );
  const outside = readings.filter(
    ({ place: { key } }) => key !== undefined && (key < firstKey || key > lastKey),
  );
  if (outside.length > 0)
    throw new RangeError(
      say(
        'Cannot keep the compass {first} to {last}: it must hold every reading, and {count, plural, one {# lies} other {# lie}} outside, such as at {note}. Take back what is not of this piano first, or change the compass.',
        { ...compass, count: outside.length, note: noteName(outside[0]!.place.key!) },
      ),
    );
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
        "Cannot keep {what} as it leaves the compass: {first} to {last} is needed, {foundFirst} to {foundLast} was found. Correct the section, or the piano's compass.",
        {
          what,
          first: noteName(piano.firstKey),
          last: noteName(piano.lastKey),
          foundFirst: noteName(firstKey),
          foundLast: noteName(lastKey),
        },
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
