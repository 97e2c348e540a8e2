import { english, type Language } from '@becket/core';
import { canonicalText, type FactOf, type Job, type Place, type Ulid } from '@becket/journal';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { type Finding, placeInWords } from './compare-surveys.ts';

export interface CopiedSurvey {
  readonly job: Job;
  readonly copied: number;
  /** Lines that were copied before. */
  readonly already: number;
  /** Lines whose place is not on this piano as it is described, in words; not copied. */
  readonly notOnThisPiano: readonly string[];
}

/**
 * Brings the survey of an earlier job of the same piano in, each line with the day it was made, so that it can be compared with
 * today's. A line that stands here already is not copied again. Photos stay with their own job.
 *
 * Throws: RangeError when both are one job, when serial numbers say that it is another piano, or when there is nothing to
 * copy. Nothing is stored then.
 */
export async function copyEarlierSurvey(
  context: TaskContext,
  job: Ulid,
  earlierJob: Ulid,
): Promise<CopiedSurvey> {
  const language = context.language ?? english;
  const { say } = language;
  if (job === earlierJob)
    throw new RangeError(
      say('Cannot copy the survey: an earlier job is needed, this job itself was found. Choose another one.'),
    );
  const state = await readJob(context, job);
  const earlier = await readJob(context, earlierJob);
  requireSamePiano(state, earlier, language);
  const day = state.openedAt?.slice(0, 10);
  const known = new Set(state.findings.filter(({ copiedFrom }) => copiedFrom !== undefined).map(nameOf));
  const facts = earlier.findings.map((finding) => copyOf(finding, state.seal !== undefined, language));
  if (facts.length === 0)
    throw new RangeError(
      say(
        'Cannot copy the survey of ‘{title}’: at least one line is needed, it has none. Choose another job.',
        { title: earlier.title },
      ),
    );
  const later = facts.find(
    ({ copiedFrom }) => day !== undefined && copiedFrom !== undefined && copiedFrom > day,
  );
  if (later !== undefined)
    throw new RangeError(
      say(
        'Cannot copy the survey of ‘{title}’: one made before this job was opened on {day} is needed, a line of {found} was found. Choose the earlier job.',
        { title: earlier.title, day: language.day(day!), found: language.day(later.copiedFrom!) },
      ),
    );
  const fitting = facts.filter(({ place }) => isOnPiano(state, place));
  const fresh = fitting.filter((fact) => !known.has(nameOf(fact)));
  const changed = fresh.length === 0 ? state : (await addFacts(context, job, fresh)).job;
  return {
    job: changed,
    copied: fresh.length,
    already: fitting.length - fresh.length,
    notOnThisPiano: facts
      .filter(({ place }) => !isOnPiano(state, place))
      .map(({ place }) => placeInWords(place, language)),
  };
}

function copyOf(
  { thing, place, answer, at, copiedFrom }: Finding,
  isSealed: boolean,
  language: Language,
): FactOf<'finding'> {
  // A line that the earlier job had copied itself keeps the day on which somebody looked.
  const day = copiedFrom ?? at.slice(0, 10);
  return {
    kind: 'finding',
    v: 1,
    thing,
    place,
    answer,
    copiedFrom: day,
    ...(isSealed
      ? { reason: language.say('copied from the survey of {day}', { day: language.day(day) }) }
      : {}),
  };
}

const nameOf = ({ thing, place, answer, copiedFrom }: Omit<FactOf<'finding'>, 'kind' | 'v'>): string =>
  canonicalText({ thing, place, answer, copiedFrom });

function requireSamePiano(state: Job, earlier: Job, { say }: Language): void {
  const [here, there] = [state.piano?.serialNumber?.trim(), earlier.piano?.serialNumber?.trim()];
  if (!here || !there || here === there) return;
  throw new RangeError(
    say(
      'Cannot copy the survey of ‘{title}’: a job of the same piano is needed, serial number {found} was found and not {needed}. Choose another job, or correct the serial number.',
      { title: earlier.title, found: there, needed: here },
    ),
  );
}

function isOnPiano({ piano, sections }: Job, { key, section }: Place): boolean {
  if (piano !== undefined && key !== undefined && (key < piano.firstKey || key > piano.lastKey)) return false;
  return section === undefined || sections.some((one) => one.section === section);
}
