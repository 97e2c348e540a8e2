import { english, type Language } from '@becket/core';
import {
  asFoundRecord,
  isFinished,
  type Job,
  type Settling,
  type Stringing,
  type StrungScale,
  stringName,
} from '@becket/journal';
import { noteRuns } from '../note-runs.ts';

/** Something that is unknown or not done, where it is settled, and what it is. */
export interface OpenThing {
  readonly about:
    | 'record'
    | 'stringing'
    | 'scale'
    | 'wire'
    | 'torque'
    | 'bearing'
    | 'pitch'
    | 'follow-up'
    | 'change order';
  readonly sentence: string;
}

/**
 * What is still open on a piano that is to be handed over, each by name. Nothing of it forbids the hand-over; all of it stands
 * on the record.
 *
 * @param today  YYYY-MM-DD: a follow-up that was planned for a day before it is late
 */
export function stillOpen(
  job: Job,
  {
    stringing,
    settling,
    scale,
    today,
  }: { stringing: Stringing; settling: Settling; scale: StrungScale; today: string },
  language: Language = english,
): OpenThing[] {
  return [
    ...openRecord(job, language),
    ...openStringing(job, stringing, language),
    ...openScale(job, scale, language),
    ...openSections(job, language),
    ...openPasses(job, settling, language),
    ...openFollowUps(settling, today, language),
    ...openChanges(job, language),
  ];
}

function openRecord({ seal, piano }: Job, { say }: Language): OpenThing[] {
  return [
    ...(piano === undefined
      ? [{ about: 'record', sentence: say('The piano is not described.') } as const]
      : []),
    ...(seal === undefined
      ? [{ about: 'record', sentence: say('The as-found record is not sealed.') } as const]
      : []),
  ];
}

/** Strings that nobody noted a wire on, where wires were noted at all: a piano may have been strung by the sheets. */
function openStringing({ unisons }: Job, { wires, mishaps }: Stringing, language: Language): OpenThing[] {
  if (wires.size === 0 && mishaps.length === 0) return [];
  const bare = [...unisons.entries()]
    .filter(([key, { strings }]) =>
      Array.from({ length: strings }, (_, index) => index + 1).some(
        (string) => !wires.has(stringName({ key, string })),
      ),
    )
    .map(([key]) => key);
  if (bare.length === 0) return [];
  const notes = noteRuns(bare, language);
  return [
    {
      about: 'stringing',
      sentence: language.say('Not every wire is noted as being on: {notes}.', { notes }),
    },
  ];
}

function openScale(job: Job, scale: StrungScale, language: Language): OpenThing[] {
  const { say } = language;
  const notes = (keys: readonly number[]) => noteRuns(keys, language);
  const undescribed = asFoundRecord(job).notes.filter(({ strings }) => strings === undefined);
  const unmeasured = scale.notes.filter(({ from }) => from !== 'measured').map(({ key }) => key);
  const unknown = scale.notComputed.filter((key) => !undescribed.some((one) => one.key === key));
  const open: OpenThing[] = [];
  if (scale.chosen === undefined)
    open.push({ about: 'scale', sentence: say('No scale was chosen: nothing says what was to be strung.') });
  if (undescribed.length > 0)
    open.push({
      about: 'stringing',
      sentence: say('The stringing is not described: {notes}.', {
        notes: notes(undescribed.map(({ key }) => key)),
      }),
    });
  if (unknown.length > 0)
    open.push({
      about: 'wire',
      sentence: say('Size or length is unknown: {notes}.', { notes: notes(unknown) }),
    });
  if (unmeasured.length > 0)
    open.push({
      about: 'wire',
      sentence: say('The new wire was not measured: {notes}.', { notes: notes(unmeasured) }),
    });
  return open;
}

function openSections({ sections, readings }: Job, { say }: Language): OpenThing[] {
  const lacking = (quantities: readonly string[]): string =>
    sections
      .filter(
        ({ section, firstKey, lastKey }) =>
          !readings.some(
            ({ stage, quantity, place }) =>
              stage === 'as strung' &&
              quantities.includes(quantity) &&
              (place.section === section ||
                (place.key !== undefined && firstKey <= place.key && place.key <= lastKey)),
          ),
      )
      .map(({ section }) => section)
      .join(', ');
  const torque = lacking(['pin-torque']);
  const bearing = lacking(['bearing-angle', 'bearing-rise']);
  const open: OpenThing[] = [];
  if (torque !== '')
    open.push({
      about: 'torque',
      sentence: say('Pin torque was not read on the new strings: {sections}.', { sections: torque }),
    });
  if (bearing !== '')
    open.push({
      about: 'bearing',
      sentence: say('Bearing was not read on the new strings: {sections}.', { sections: bearing }),
    });
  return open;
}

function openPasses(job: Job, { passes }: Settling, { say }: Language): OpenThing[] {
  const last = passes.at(-1);
  if (last === undefined)
    return [{ about: 'pitch', sentence: say('No pass is recorded: where the pitch stands is unknown.') }];
  if (isFinished(last, job)) return [];
  const left = last.sections.filter(({ after }) => after.length === 0).map(({ section }) => section);
  return [
    {
      about: 'pitch',
      sentence: say('Pass {pass} is not finished: {sections}.', {
        pass: last.pass,
        sections: left.join(', '),
      }),
    },
  ];
}

function openFollowUps({ followUps }: Settling, today: string, { say, day }: Language): OpenThing[] {
  return followUps
    .filter(({ done }) => done === undefined)
    .map(({ on }) => ({
      about: 'follow-up',
      sentence:
        on < today
          ? say('The follow-up of {day} is not done.', { day: day(on) })
          : say('A follow-up is planned for {day}.', { day: day(on) }),
    }));
}

function openChanges({ damages, changeAnswers }: Job, { say }: Language): OpenThing[] {
  return damages
    .filter(({ entry }) => !changeAnswers.some(({ damage }) => damage === entry))
    .map(({ what }) => ({
      about: 'change order',
      sentence: say('The change order has no answer yet: {what}.', { what: what.replace(/\.$/, '') }),
    }));
}
