import type { Job, ObservedThing } from '@becket/journal';

export type Seen = Job['observations'][number];

/** The observation that stands last of a thing at a place: a section by name, or the whole piano. */
export function seenAt(job: Job, thing: ObservedThing, section: string | undefined): Seen | undefined {
  return job.observations.findLast((one) => one.thing === thing && one.place.section === section);
}

export function seenWords(seen: Seen): string {
  const { answer } = seen;
  if (answer.is === 'known') return answer.text;
  return answer.reason === undefined ? answer.is : `${answer.is}: ${answer.reason}`;
}
