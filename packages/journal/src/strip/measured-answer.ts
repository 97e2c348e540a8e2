import type { ObservedThing } from '../facts/answer.ts';
import type { ReadingQuantityName } from '../facts/reading-quantities.ts';
import type { Job } from '../fold/job.ts';
import type { AsFoundNote } from '../record/as-found-record.ts';

/** Whether what was measured of a section answers for one of its things, so that no words are needed. */
export type MeasuredAnswer =
  | { readonly is: 'answered' }
  | { readonly is: 'looked in vain' }
  /** Some of its strings, and not all. */
  | { readonly is: 'in part'; readonly left: number; readonly of: number }
  | { readonly is: 'nothing' };

/** The soft parts that speak for a thing. */
const softPartsOf: Partial<Record<ObservedThing, readonly Job['softParts'][number]['part'][]>> = {
  felts: ['felt', 'stringing braid'],
  punchings: ['punchings'],
};

/** What the measured facts of a section say of a thing that can also be told in words. */
export function measuredAnswer(
  job: Job,
  {
    thing,
    section,
    notes,
  }: { readonly thing: ObservedThing; readonly section: string; readonly notes: readonly AsFoundNote[] },
): MeasuredAnswer {
  const softParts = softPartsOf[thing];
  if (softParts !== undefined) {
    const own = job.softParts.filter((one) => one.section === section && softParts.includes(one.part));
    if (own.length === 0) return { is: 'nothing' };
    return { is: own.some(({ answer }) => answer.is !== 'unknown') ? 'answered' : 'looked in vain' };
  }
  switch (thing) {
    case 'bars':
      return { is: job.plateParts.some((one) => one.section === section) ? 'answered' : 'nothing' };
    case 'loops':
      return wiresAnswer(job, notes);
    case 'bearing':
      return bearingAnswer(job, section, notes);
    case 'spacing':
      return allRead(job, ['strike-line-spacing', 'bridge-spacing'], { section, notes });
    case 'hitch-pins': {
      const isHere = (keys: readonly number[]) => notes.some(({ key }) => keys.includes(key));
      const isNamed = job.wirePaths.some(
        ({ strings, hitchPin }) => hitchPin !== undefined && isHere(strings.map(({ key }) => key)),
      );
      return isNamed ? { is: 'answered' } : allRead(job, ['hitch-pin-diameter'], { section, notes });
    }
    case 'stamps':
      return {
        is: job.sizeStamps.some(({ key }) => notes.some((note) => note.key === key)) ? 'answered' : 'nothing',
      };
    default:
      return { is: 'nothing' };
  }
}

/** Every string on a wire of which somebody has said whether it is looped or tied. */
function wiresAnswer(job: Job, notes: readonly AsFoundNote[]): MeasuredAnswer {
  const said = new Map(
    job.wirePaths.flatMap(({ strings, joined }) =>
      strings.map(({ key, string }) => [`${key}/${string}`, joined]),
    ),
  );
  const strings = notes.flatMap(({ key, strings: count = 0 }) =>
    Array.from({ length: count }, (_, index) => `${key}/${index + 1}`),
  );
  const isDescribed = notes.length > 0 && notes.every((note) => note.strings !== undefined);
  const left = strings.filter((name) => (said.get(name) ?? 'unknown') === 'unknown').length;
  if (isDescribed && left === 0) return { is: 'answered' };
  if (strings.some((name) => said.has(name)) && left > 0)
    return left === strings.length ? { is: 'looked in vain' } : { is: 'in part', left, of: strings.length };
  return { is: 'nothing' };
}

/** Answered once each of these is read somewhere in the section. */
function allRead(
  job: Job,
  quantities: readonly ReadingQuantityName[],
  { section, notes }: { readonly section: string; readonly notes: readonly AsFoundNote[] },
): MeasuredAnswer {
  const isRead = (quantity: ReadingQuantityName) =>
    job.readings.some(
      (one) =>
        one.quantity === quantity &&
        one.stage === 'as found' &&
        (one.place.section === section || notes.some(({ key }) => key === one.place.key)),
    );
  return { is: quantities.every(isRead) ? 'answered' : 'nothing' };
}

/** Bearing read under load, or answered: once the strings are off only the unloaded one is left. */
function bearingAnswer(job: Job, section: string, notes: readonly AsFoundNote[]): MeasuredAnswer {
  const isHere = ({ key, section: named }: { key?: number | undefined; section?: string | undefined }) =>
    named === section || notes.some((note) => note.key === key);
  const isBearing = (quantity: string) => quantity === 'bearing-angle' || quantity === 'bearing-rise';
  const isRead = job.readings.some(
    (one) => isBearing(one.quantity) && one.stage === 'as found' && one.loaded !== false && isHere(one.place),
  );
  if (isRead) return { is: 'answered' };
  const answers = job.absences.filter((one) => isBearing(one.quantity) && isHere(one.place));
  if (answers.length === 0) return { is: 'nothing' };
  return { is: answers.some(({ answer }) => answer !== 'unknown') ? 'answered' : 'looked in vain' };
}

/** The wound notes of which the loop style or the twist of a string is not known. */
export function notesWithoutWinding(job: Job, notes: readonly AsFoundNote[]): AsFoundNote[] {
  const known = new Set(
    job.windings
      .filter(({ loopStyle, twist }) => loopStyle !== 'unknown' && twist !== 'unknown')
      .map(({ key, string }) => `${key}/${string ?? 'all'}`),
  );
  return notes.filter(
    ({ key, winding, strings = 1 }) =>
      winding === 'wound' &&
      !known.has(`${key}/all`) &&
      !Array.from({ length: strings }, (_, index) => known.has(`${key}/${index + 1}`)).every(Boolean),
  );
}
