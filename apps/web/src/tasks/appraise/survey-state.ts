import { english, inches, type Language, metres, millimetres, noteName, parseNote } from '@becket/core';
import {
  type findingGravities,
  type findingRemedies,
  type Job,
  type repairStates,
  type SurveyPart,
  type SurveyThing,
  surveyParts,
  surveyThingNames,
  surveyThings,
} from '@becket/journal';
import type { FindingToRecord } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

export type Finding = Job['findings'][number];
export type FindingAnswer = Finding['answer']['is'];

export const surveyPartNames = Object.keys(surveyParts) as SurveyPart[];

export const thingsOf = (part: SurveyPart): SurveyThing[] =>
  surveyThingNames.filter((thing) => surveyThings[thing].part === part);

/** Today's lines of a thing; what was copied from an earlier survey is told apart. */
export function linesOf(job: Job, thing: SurveyThing): Finding[] {
  return job.findings.filter((finding) => finding.thing === thing && finding.copiedFrom === undefined);
}

/** How many things of a part, or of the whole survey, have an answer. */
export function surveyProgress(job: Job, part?: SurveyPart): { answered: number; of: number } {
  const things = part === undefined ? surveyThingNames : thingsOf(part);
  return { answered: things.filter((thing) => linesOf(job, thing).length > 0).length, of: things.length };
}

/** The part that still has something open, looking on from the given one; undefined when all is answered. */
export function nextOpenPart(job: Job, from: SurveyPart): SurveyPart | undefined {
  const at = surveyPartNames.indexOf(from);
  const onward = [...surveyPartNames.slice(at + 1), ...surveyPartNames.slice(0, at + 1)];
  return onward.find((part) => {
    const { answered, of } = surveyProgress(job, part);
    return answered < of;
  });
}

export interface FindingForm {
  readonly what: string;
  readonly section: string;
  readonly note: string;
  readonly point: string;
  readonly gravity: (typeof findingGravities)[number] | '';
  readonly whatToDo: (typeof findingRemedies)[number] | '';
  readonly extent: string;
  readonly repair: (typeof repairStates)[number] | '';
  readonly photos: readonly string[];
  readonly reason: string;
}

export function newFindingForm(at?: { section?: string | undefined; key?: number | undefined }): FindingForm {
  return {
    what: '',
    section: at?.section ?? '',
    note: at?.key === undefined ? '' : noteName(at.key),
    point: '',
    gravity: '',
    whatToDo: '',
    extent: '',
    repair: '',
    photos: [],
    reason: '',
  };
}

/** A line as the form shows it, to be corrected. */
export function formOfFinding(
  { answer, place, photos }: Finding,
  unit: LengthUnit,
  { fixed }: Language = english,
): FindingForm {
  const form = { ...newFindingForm(place), point: place.point ?? '', photos: photos ?? [] };
  if (answer.is !== 'seen') return form;
  const { what, gravity, whatToDo, extent_m, repair } = answer;
  const extent =
    extent_m === undefined
      ? ''
      : unit === 'mm'
        ? `${fixed(extent_m / millimetres(1), 0)} mm`
        : `${fixed(extent_m / inches(1), 2)} in`;
  return { ...form, what, gravity, whatToDo, extent, repair: repair ?? '' };
}

/** The line a form describes. Throws, with a sentence, when something needed is missing. */
export function findingOf(
  thing: SurveyThing,
  form: FindingForm,
  unit: LengthUnit,
  replaces?: string,
  language: Language = english,
): FindingToRecord {
  const { say } = language;
  const label = say(surveyThings[thing].label);
  const what = form.what.trim();
  const missing =
    what === ''
      ? say('Cannot keep ‘{label}’: what is seen is needed, nothing was found. Say it in a few words.', {
          label,
        })
      : form.gravity === ''
        ? say(
            'Cannot keep ‘{label}’: how grave it is is needed, nothing was chosen. Choose slight, clear or grave.',
            { label },
          )
        : form.whatToDo === ''
          ? say('Cannot keep ‘{label}’: what to do about it is needed, nothing was chosen. Choose one.', {
              label,
            })
          : undefined;
  if (missing !== undefined) throw new RangeError(missing);
  const extent = readTypedNumber(form.extent, language);
  if (extent.is === 'problem') throw new RangeError(extent.sentence);
  const extent_m =
    extent.is === 'empty'
      ? undefined
      : extent.unit === 'm'
        ? metres(extent.value)
        : (extent.unit ?? unit) === 'in'
          ? inches(extent.value)
          : millimetres(extent.value);
  if (extent_m !== undefined && !(extent_m > 0 && extent_m <= 3))
    throw new RangeError(
      say(
        "Cannot keep ‘{label}’: a length above 0 and up to 3 m is needed, '{found}' was found. Check the unit.",
        { label, found: form.extent.trim() },
      ),
    );
  return {
    thing,
    place: placeOf(form, language),
    answer: {
      is: 'seen',
      what,
      gravity: form.gravity as Exclude<FindingForm['gravity'], ''>,
      whatToDo: form.whatToDo as Exclude<FindingForm['whatToDo'], ''>,
      ...(extent_m === undefined ? {} : { extent_m }),
      ...(form.repair === '' ? {} : { repair: form.repair }),
    },
    ...(form.photos.length === 0 ? {} : { photos: [...form.photos] }),
    ...(replaces === undefined ? {} : { replaces }),
    ...reasonOf(form.reason),
  };
}

/** Where a photo of a finding belongs: at what is typed of its place so far, a note that cannot be read left out. */
export function photoPlaceOf(form: FindingForm): FindingToRecord['place'] {
  try {
    return placeOf(form);
  } catch {
    return placeOf({ ...form, note: '' });
  }
}

/** A thing answered in one tap. */
export function shortFinding(
  thing: SurveyThing,
  is: Exclude<FindingAnswer, 'seen'>,
  replaced: Finding | undefined,
  reason: string,
): FindingToRecord {
  return {
    thing,
    place: {},
    answer: { is },
    ...(replaced === undefined ? {} : { replaces: replaced.entry }),
    ...reasonOf(reason),
  };
}

function reasonOf(reason: string): { reason?: string } {
  return reason.trim() === '' ? {} : { reason: reason.trim() };
}

function placeOf(
  { section, note, point }: FindingForm,
  language: Language = english,
): FindingToRecord['place'] {
  const key = note.trim() === '' ? undefined : parseNote(note.trim(), undefined, language);
  return {
    ...(key === undefined ? {} : { key }),
    ...(section === '' ? {} : { section }),
    ...(point.trim() === '' ? {} : { point: point.trim() }),
  };
}

/** The place of a line in words; empty for the whole piano. */
export function findingPlaceWords({ place }: Pick<Finding, 'place'>, { say }: Language = english): string {
  return [
    place.section === undefined ? undefined : say('section {section}', { section: place.section }),
    place.key === undefined ? undefined : noteName(place.key),
    place.point,
  ]
    .filter((word) => word !== undefined)
    .join(', ');
}
