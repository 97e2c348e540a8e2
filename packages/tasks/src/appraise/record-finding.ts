import { english, type Language, noteName } from '@becket/core';
import { type FactOf, type Job, surveyThings, type Ulid } from '@becket/journal';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from '../context.ts';

/** A line of the survey as a person gives it. */
export type FindingToRecord = Omit<FactOf<'finding'>, 'kind' | 'v'>;

/**
 * Keeps lines of the survey: things seen, sound, not to be seen, or not on this piano; all or none.
 *
 * Throws: RangeError when a place is not on this piano, when a photo is not one of this job, when the line it replaces is
 * not in the survey, or when a repair is told of something that is none; RecordIsSealed when the record is sealed and a
 * line has no reason. Nothing is stored then.
 */
export async function recordFindings(
  context: TaskContext,
  job: Ulid,
  findings: readonly FindingToRecord[],
): Promise<Job> {
  const state = await readJob(context, job);
  for (const finding of findings) requireFinding(state, finding, context.language ?? english);
  if (state.seal !== undefined && findings.some(({ reason }) => (reason ?? '').trim() === ''))
    throw new RecordIsSealed(state.seal.at, context.language);
  const { job: changed } = await addFacts(
    context,
    job,
    findings.map((finding) => ({ kind: 'finding' as const, v: 1 as const, ...finding })),
  );
  return changed;
}

function requireFinding(
  state: Job,
  { thing, place, photos = [], replaces }: FindingToRecord,
  { say }: Language,
): void {
  const label = say(surveyThings[thing].label);
  const { piano, sections } = state;
  const { key, section } = place;
  if (piano !== undefined && key !== undefined && (key < piano.firstKey || key > piano.lastKey))
    throw new RangeError(
      say(
        "Cannot keep ‘{what}’: a note from {first} to {last} is needed, {found} was found. Check the note, or the piano's compass.",
        {
          what: label,
          first: noteName(piano.firstKey),
          last: noteName(piano.lastKey),
          found: noteName(key),
        },
      ),
    );
  if (section !== undefined && !sections.some((one) => one.section === section))
    throw new RangeError(
      say(
        "Cannot keep ‘{what}’: a section of this piano is needed ({sections}), '{found}' was found. Choose one, or the whole piano.",
        {
          what: label,
          sections: sections.map((one) => one.section).join(', ') || say('none is described'),
          found: section,
        },
      ),
    );
  if (photos.some((digest) => !state.photos.some((photo) => photo.digest === digest)))
    throw new RangeError(
      say(
        'Cannot tie that photo to ‘{what}’: a photo of this job is needed, none of that name was found. Add the photo first.',
        { what: label },
      ),
    );
  if (replaces !== undefined && !state.findings.some(({ entry }) => entry === replaces))
    throw new RangeError(
      say(
        'Cannot correct this line of ‘{what}’: it is not in the survey any more. Look at the survey again, then note it anew.',
        { what: label },
      ),
    );
}
