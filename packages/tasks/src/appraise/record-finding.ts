import { noteName } from '@becket/core';
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
  for (const finding of findings) requireFinding(state, finding);
  if (state.seal !== undefined && findings.some(({ reason }) => (reason ?? '').trim() === ''))
    throw new RecordIsSealed(state.seal.at);
  const { job: changed } = await addFacts(
    context,
    job,
    findings.map((finding) => ({ kind: 'finding' as const, v: 1 as const, ...finding })),
  );
  return changed;
}

function requireFinding(state: Job, { thing, place, photos = [], replaces }: FindingToRecord): void {
  const { label } = surveyThings[thing];
  const { piano, sections } = state;
  const { key, section } = place;
  if (piano !== undefined && key !== undefined && (key < piano.firstKey || key > piano.lastKey))
    throw new RangeError(
      `Cannot keep ‘${label}’: a note from ${noteName(piano.firstKey)} to ${noteName(piano.lastKey)} is needed, ${noteName(key)} was found. Check the note, or the piano's compass.`,
    );
  if (section !== undefined && !sections.some((one) => one.section === section))
    throw new RangeError(
      `Cannot keep ‘${label}’: a section of this piano is needed (${sections.map((one) => one.section).join(', ') || 'none is described'}), '${section}' was found. Choose one, or the whole piano.`,
    );
  if (photos.some((digest) => !state.photos.some((photo) => photo.digest === digest)))
    throw new RangeError(
      `Cannot tie that photo to ‘${label}’: a photo of this job is needed, none of that name was found. Add the photo first.`,
    );
  if (replaces !== undefined && !state.findings.some(({ entry }) => entry === replaces))
    throw new RangeError(
      `Cannot correct this line of ‘${label}’: it is not in the survey any more. Look at the survey again, then note it anew.`,
    );
}
