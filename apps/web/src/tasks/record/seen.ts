import { english, type Language } from '@becket/core';
import {
  type Absence,
  type AsFoundRecord,
  type Job,
  type MeasuredAnswer,
  measuredAnswer,
  type ObservedThing,
  observedThingNames,
} from '@becket/journal';
import { recordObservation, type TaskContext } from '@becket/tasks';

export type Seen = Job['observations'][number];

/** The observation that stands last of a thing at a place: a section by name, or the whole piano. */
export function seenAt(job: Job, thing: ObservedThing, section: string | undefined): Seen | undefined {
  return job.observations.findLast((one) => one.thing === thing && one.place.section === section);
}

export function seenWords(seen: Seen, { say }: Language = english): string {
  const { answer } = seen;
  if (answer.is === 'known') return answer.text;
  return answer.reason === undefined ? say(answer.is) : `${say(answer.is)}: ${answer.reason}`;
}

/** How it stands with one thing of a section. */
export interface ThingSeen {
  readonly thing: ObservedThing;
  /** What is noted of it here. */
  readonly seen: Seen | undefined;
  /** True while nobody has said enough of it: nothing, a part, or that it could not be told. */
  readonly isOpen: boolean;
  /** What stands in its row. */
  readonly words: string;
}

/** Every thing of a section; or of the whole piano, where nothing has to be said. */
export function thingsSeen(
  job: Job,
  record: AsFoundRecord,
  section: string | undefined,
  language: Language = english,
): ThingSeen[] {
  const { say } = language;
  const notes = record.notes.filter((note) => note.section?.section === section);
  return observedThingNames.map((thing): ThingSeen => {
    const seen = seenAt(job, thing, section);
    if (seen !== undefined)
      return {
        thing,
        seen,
        isOpen: section !== undefined && thing !== 'remarks' && seen.answer.is === 'unknown',
        words: seenWords(seen, language),
      };
    if (section === undefined || thing === 'remarks')
      return { thing, seen, isOpen: false, words: say('nothing noted') };
    const everywhere = seenAt(job, thing, undefined);
    if (everywhere !== undefined && everywhere.answer.is !== 'unknown')
      return {
        thing,
        seen,
        isOpen: false,
        words: say('on the whole piano: {seen}', { seen: seenWords(everywhere, language) }),
      };
    const measured = measuredAnswer(job, { thing, section, notes });
    return { thing, seen, ...ofMeasured(measured, everywhere !== undefined, language) };
  });
}

/** What stands in the row of a thing that is told by what was measured of it, or by nothing. */
function ofMeasured(
  measured: MeasuredAnswer,
  wasLookedFor: boolean,
  { say }: Language = english,
): Pick<ThingSeen, 'isOpen' | 'words'> {
  switch (measured.is) {
    case 'answered':
      return { isOpen: false, words: say('measured') };
    case 'in part':
      return {
        isOpen: true,
        words: say('{noted} of {of} strings noted', { noted: measured.of - measured.left, of: measured.of }),
      };
    case 'looked in vain':
      return { isOpen: true, words: say('unknown') };
    case 'nothing':
      return { isOpen: true, words: wasLookedFor ? say('unknown') : say('open') };
  }
}

/** How many things of a section are still open. */
export const openThings = (
  job: Job,
  record: AsFoundRecord,
  section: string,
  language: Language = english,
): number => thingsSeen(job, record, section, language).filter(({ isOpen }) => isOpen).length;

/** What is typed or tapped of a thing. */
export interface SeenForm {
  readonly answer: 'known' | Absence;
  readonly text: string;
}
export const seenForm = (seen: Seen | undefined): SeenForm => ({
  answer: seen?.answer.is ?? 'known',
  text: seen === undefined ? '' : seen.answer.is === 'known' ? seen.answer.text : (seen.answer.reason ?? ''),
});

/** Keeps what was seen of a thing in place of what stood there. Throws when it is there and nothing is said of it. */
export async function keepSeen(
  context: TaskContext,
  job: string,
  { thing, section, seen }: { thing: ObservedThing; section: string | undefined; seen: Seen | undefined },
  { answer, text }: SeenForm,
  said: { readonly reason?: string },
  { say }: Language = english,
): Promise<Job> {
  const words = text.trim();
  if (answer === 'known' && words === '')
    throw new RangeError(
      say(
        'Cannot keep this note: words are needed, none were found. Say what is there, or choose one of the other answers.',
      ),
    );
  return recordObservation(context, job, {
    thing,
    place: section === undefined ? {} : { section },
    answer:
      answer === 'known'
        ? { is: 'known', text: words }
        : { is: answer, ...(words === '' ? {} : { reason: words }) },
    ...(seen === undefined ? {} : { replaces: seen.entry }),
    ...said,
  });
}
