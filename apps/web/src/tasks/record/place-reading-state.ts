import { english, keyRangeAt, type Language, noteName, parseNote } from '@becket/core';
import { type Absence, answersThatStand, type Job, type Place, type StandingReading } from '@becket/journal';
import { readJob, recordAbsence, recordReadings, type TaskContext, takeBackEntry } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import {
  type PlaceQuantity,
  type PlaceReadingForm,
  placeQuantities,
  placeQuantityNames,
  placeReadingOf,
} from './parts-state.ts';
import { reasonFor, takeBackWhole } from './record-state.ts';
import { lengthToType } from './typed-length.ts';

type StandingAnswer = Job['absences'][number];
/** What stands of something read here and there: a reading, or an answer instead of one. */
export type PlaceEntry = StandingReading | StandingAnswer;

/** A reading here and there, or one of the answers instead of it. */
export interface PlaceForm extends Omit<PlaceReadingForm, 'unit'> {
  readonly answer: 'known' | Absence;
  /** Why it is unknown or not there. */
  readonly why: string;
}

/** The form of what stands; of a section, or of the piano as a whole, while nothing does. */
export function placeForm(
  entry: PlaceEntry | undefined,
  around: {
    readonly section: string | undefined;
    /** Proposed where no section is looked at. */
    readonly firstSection: string | undefined;
    readonly screenUnit: LengthUnit;
  },
  language: Language = english,
): PlaceForm {
  const { key, section, point } = entry?.place ?? {};
  const reading = entry?.kind === 'reading' ? entry : undefined;
  return {
    quantity:
      (entry?.quantity as PlaceQuantity | undefined) ??
      (around.section === undefined ? 'relative-humidity' : 'bearing-rise'),
    answer: entry?.kind === 'reading-absent' ? entry.answer : 'known',
    why: entry?.kind === 'reading-absent' ? (entry.reason ?? '') : '',
    value: reading === undefined ? '' : language.plain(reading.asRead.value),
    note: key === undefined ? '' : noteName(key),
    section: section ?? around.section ?? around.firstSection ?? '',
    point: point ?? '',
    span: reading?.span_m === undefined ? '' : lengthToType(reading.span_m, around.screenUnit, language),
    loaded: reading?.loaded === undefined ? 'not said' : reading.loaded ? 'loaded' : 'unloaded',
  };
}

/** The answers that stand instead of readings here and there, of a section; or of what lies in none. */
export function placeAnswersOf(job: Job, section: string | undefined): StandingAnswer[] {
  const names: readonly string[] = placeQuantityNames;
  return answersThatStand(job).filter(
    ({ quantity, place }) =>
      names.includes(quantity) && place.string === undefined && sectionOf(job, place) === section,
  );
}

const sectionOf = (job: Job, { key, section }: Place): string | undefined =>
  section ?? (key === undefined ? undefined : keyRangeAt(key, job.sections)?.section);

/** Where an answer belongs: at the note that is named; without one, the section that is looked at, or the whole piano. */
function placeOfAnswer(
  { quantity, note, section, point }: PlaceForm,
  isWholePiano: boolean,
  language: Language,
): Place {
  const { at } = placeQuantities[quantity];
  const isAtNote = note.trim() !== '' && at !== 'piano' && at !== 'section';
  return {
    ...(isAtNote ? { key: parseNote(note.trim(), undefined, language) } : {}),
    ...(!isAtNote && !isWholePiano && at !== 'piano' && section !== '' ? { section } : {}),
    ...(point.trim() === '' ? {} : { point: point.trim() }),
  };
}

/**
 * Keeps a reading here and there, or an answer instead of it, in place of what stood there.
 * Throws as `placeReadingOf` and the tasks do; nothing is kept or taken back then.
 */
export async function keepPlaceReading(
  context: TaskContext,
  job: string,
  form: PlaceForm & Pick<PlaceReadingForm, 'unit'>,
  around: {
    readonly before: PlaceEntry | undefined;
    readonly screenUnit: LengthUnit;
    readonly isWholePiano: boolean;
    readonly said: { readonly reason?: string };
  },
): Promise<Job> {
  const language = context.language ?? english;
  const { before, screenUnit, isWholePiano, said } = around;
  const otherwise = language.say('typed again while recording');
  if (form.answer === 'known') {
    const { answer: _answer, why: _why, ...typed } = form;
    const reading = placeReadingOf(typed, screenUnit, language);
    if (before?.kind !== 'reading') {
      const { job: kept } = await recordReadings(context, job, [{ ...reading, ...said }]);
      return before === undefined ? kept : takeBackEntry(context, job, before.entry, { ...said, otherwise });
    }
    const { job: corrected } = await recordReadings(context, job, [
      {
        ...reading,
        // What the form does not ask stays as it was said.
        condition: before.condition,
        instrument: reading.instrument ?? before.instrument,
        replaces: before.entry,
        reason: await reasonFor(context, job, said.reason ?? '', otherwise),
      },
    ]);
    return corrected;
  }
  const why = form.why.trim();
  const answered = await recordAbsence(context, job, {
    quantity: form.quantity,
    place: placeOfAnswer(form, isWholePiano, language),
    answer: form.answer,
    ...(why === '' ? said : { reason: why }),
  });
  if (before?.kind === 'reading') {
    const reason = await reasonFor(context, job, said.reason ?? why, otherwise);
    await takeBackWhole(context, job, before.entry, reason);
    return readJob(context, job);
  }
  return before === undefined
    ? answered
    : takeBackEntry(context, job, before.entry, { reason: said.reason ?? why, otherwise });
}
