import type { Language, LengthUnit } from '@becket/core';
import { type Job, type SurveyThing, surveyThings } from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { photosBlock, printedPhoto } from '../every-paper/printed-photo.ts';
import type { Block, PrintedPhoto, Table, TableRow } from '../page-tree.ts';
import type { AppraisalFigures } from './appraisal-figures.ts';
import {
  gravityInPlainWords,
  meaningOf,
  partInPlainWords,
  remedyInPlainWords,
  repairInPlainWords,
} from './plain-words.ts';
import {
  asSentence,
  capitalised,
  couldNotBeSeen,
  isSeen,
  numberedPhotos,
  type SeenFinding,
  type SurveyOfPart,
  surveyByPart,
} from './survey-state.ts';

/** Every part with what it is for and what came of looking at it. */
export function whatWeLookedAt(job: Job, language: Language): Table {
  const { say } = language;
  return {
    is: 'table',
    columns: [
      { heading: say('[of a piano] part'), align: 'left', share: 95 },
      { heading: say('what it is for'), align: 'left', share: 225, tone: 'quiet' },
      { heading: say('what came of it'), align: 'left', share: 180 },
    ],
    rows: surveyByPart(job).map(
      (own): TableRow => ({
        cells: [say(own.name), say(partInPlainWords[own.part]), cameOfIt(own, language)],
      }),
    ),
  };
}

function cameOfIt({ findings, notLookedAt }: SurveyOfPart, { say }: Language): string {
  if (findings.length === 0) return say('not looked at yet');
  const seen = findings.filter(isSeen).length;
  const unseen = findings.filter(couldNotBeSeen).length;
  const sound = findings.filter(({ answer }) => answer.is === 'sound').length;
  const parts = [
    ...(seen > 0
      ? [say('{count, plural, one {# thing found} other {# things found}}', { count: seen })]
      : []),
    ...(sound > 0 ? [say('{count, plural, one {# point} other {# points}} sound', { count: sound })] : []),
    ...(unseen > 0
      ? [say('{count, plural, one {# point} other {# points}} could not be seen', { count: unseen })]
      : []),
    ...(notLookedAt.length > 0
      ? [say('{count, plural, one {# point} other {# points}} not looked at', { count: notLookedAt.length })]
      : []),
  ];
  return parts.length === 0 ? say('does not apply to this piano') : parts.join('; ');
}

/** What was seen, part by part, with what it means and where its photos are. */
export function whatWeFound(job: Job, language: Language): Block[] {
  const { say } = language;
  const photos = numberedPhotos(job);
  const survey = surveyByPart(job);
  const parts = survey.filter(({ findings }) => findings.some(isSeen));
  if (parts.length === 0)
    return [
      {
        is: 'paragraph',
        text: survey.every(({ findings }) => findings.length === 0)
          ? say('The piano was not surveyed yet.')
          : say('Nothing was found that needs a word.'),
      },
    ];
  return parts.flatMap(({ name, findings }): Block[] => {
    const seen = findings.filter(isSeen);
    const things = [...new Set<SurveyThing>(seen.map(({ thing }) => thing))];
    return [
      { is: 'heading', level: 3, text: capitalised(say(name)) },
      { is: 'list', marks: 'dots', items: seen.map((finding) => foundInWords(finding, photos, language)) },
      { is: 'paragraph', tone: 'quiet', text: things.map((thing) => say(meaningOf[thing])).join(' ') },
    ];
  });
}

function foundInWords(
  { thing, place, answer, photos = [] }: SeenFinding,
  numbers: ReadonlyMap<string, number>,
  language: Language,
): string {
  const { say } = language;
  const { what, gravity, whatToDo, extent_m, repair } = answer;
  const numbered = photos.map((digest) => String(numbers.get(digest)));
  return [
    `${capitalised(say(surveyThings[thing].label))} (${placeInWords(place, language)}): ${asSentence(what)}`,
    extent_m === undefined
      ? `${say(gravityInPlainWords[gravity])}.`
      : `${say(gravityInPlainWords[gravity])}, ${extentInWords(extent_m, language)}.`,
    ...(repair === undefined ? [] : [`${say(repairInPlainWords[repair])}.`]),
    `${say(remedyInPlainWords[whatToDo])}.`,
    ...(numbered.length === 0
      ? []
      : [
          say('{count, plural, one {Photo} other {Photos}} {numbers}.', {
            count: numbered.length,
            numbers: language.list(numbered),
          }),
        ]),
  ].join(' ');
}

/** A size as people speak of it: '6 cm', '3 mm'. The annex has it to the millimetre. */
function extentInWords(extent_m: number, { say }: Language): string {
  return extent_m < 0.01
    ? say('about {length}', { length: `${Math.max(1, Math.round(extent_m * 1000))} mm` })
    : say('about {length}', { length: `${Math.round(extent_m * 100)} cm` });
}

const tellingChanges: readonly string[] = ['grew', 'graver', 'new', 'sound now'];

/** What has changed since an earlier survey, where there is one. */
export function sinceTheLastTime({ comparison }: AppraisalFigures, language: Language): Block[] {
  const { say } = language;
  const [day] = comparison?.days ?? [];
  if (comparison === undefined || day === undefined) return [];
  const changed = comparison.lines.filter(({ change }) => tellingChanges.includes(change));
  return [
    { is: 'heading', level: 3, text: say('Since the survey of {day}', { day: language.day(day) }) },
    changed.length === 0
      ? { is: 'paragraph', text: say('Nothing that was looked at both times has changed.') }
      : { is: 'list', marks: 'dots', items: changed.map(({ sentence }) => asSentence(sentence)) },
  ];
}

/** What could not be seen, and what was left out, with what that means for the work. */
export function whatWeCouldNotSee(job: Job, language: Language): Block[] {
  const { say } = language;
  const survey = surveyByPart(job);
  const unseen = survey.flatMap(({ findings }) => findings.filter(couldNotBeSeen));
  const skipped = survey.filter(({ findings, notLookedAt }) => findings.length > 0 && notLookedAt.length > 0);
  const untouched = survey.filter(({ findings }) => findings.length === 0);
  const items = [
    ...unseen.map(({ thing, place, answer }) => {
      const note = 'note' in answer && answer.note !== undefined ? `: ${answer.note}` : '';
      return asSentence(
        `${capitalised(say(surveyThings[thing].label))} (${placeInWords(place, language)})${note}`,
      );
    }),
    ...skipped.map(({ name, notLookedAt }) =>
      say('{part}, not looked at: {things}.', {
        part: capitalised(say(name)),
        things: notLookedAt.map((thing) => say(surveyThings[thing].label)).join('; '),
      }),
    ),
    ...(untouched.length === 0
      ? []
      : [
          say('Not looked at at all: {parts}.', {
            parts: untouched.map(({ name }) => say(name)).join('; '),
          }),
        ]),
  ];
  if (items.length === 0)
    return [{ is: 'paragraph', text: say('Every point of the survey could be looked at.') }];
  return [
    {
      is: 'paragraph',
      text: say(
        'A strung piano hides some of its parts. These points are open; some of them show only once the strings are off.',
      ),
    },
    { is: 'list', marks: 'dots', items },
  ];
}

/** The photos that the report names, by their number, each with where it was taken. */
export function photosOfReport(job: Job, unit: LengthUnit, language: Language): Block[] {
  const { say } = language;
  const numbers = numberedPhotos(job);
  if (numbers.size === 0) return [];
  const gone: number[] = [];
  const photos = [...numbers].flatMap(([digest, number]): PrintedPhoto[] => {
    const photo = job.photos.find((one) => one.digest === digest);
    if (photo === undefined) {
      gone.push(number);
      return [];
    }
    const { title, ...rest } = printedPhoto(photo, unit, language);
    return [
      {
        ...rest,
        title: say('Photo {number}: {title}', { number: String(number), title }),
        lines: [placeInWords(photo.place, language)],
      },
    ];
  });
  return [
    { is: 'heading', level: 2, text: say('The photos') },
    ...(gone.length === 0
      ? []
      : [
          {
            is: 'paragraph',
            text: say('No longer with the job: {count, plural, one {photo} other {photos}} {numbers}.', {
              count: gone.length,
              numbers: language.list(gone.map(String)),
            }),
          } as const,
        ]),
    ...(photos.length === 0 ? [] : [photosBlock(photos, language)]),
  ];
}
