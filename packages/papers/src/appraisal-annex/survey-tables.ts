import type { Language } from '@becket/core';
import { type Job, surveyThings } from '@becket/journal';
import type { ComparisonFigures } from '../appraisal-report/appraisal-figures.ts';
import {
  isSeen,
  numberedPhotos,
  type StandingFinding,
  surveyByPart,
} from '../appraisal-report/survey-state.ts';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { type LengthUnit, lengthCells, lengthColumns } from '../figures/lengths.ts';
import type { Block, Cell, Table, TableRow } from '../page-tree.ts';

/** Every line of the survey under its part; a part that nobody looked at says so. */
export function surveyTable(job: Job, unit: LengthUnit, language: Language): Table {
  const photos = numberedPhotos(job);
  return {
    is: 'table',
    title: 'Survey',
    remarks: [
      'Sound, could not be seen and does not apply are answers of their own. Extent: how long or wide it is, as measured. Photo: its number in the appraisal report.',
    ],
    columns: [
      { heading: 'thing', align: 'left', share: 120 },
      { heading: 'place', align: 'left', share: 90 },
      { heading: 'found', align: 'left', share: 185 },
      { heading: 'gravity', align: 'left', share: 40 },
      { heading: 'what to do', align: 'left', share: 90 },
      ...lengthColumns('extent', unit, [30, 30]),
      { heading: 'photo', align: 'centre', share: 32 },
      { heading: 'noted', align: 'left', share: 95, tone: 'quiet' },
    ],
    rows: surveyByPart(job).flatMap(({ name, findings, notLookedAt }): TableRow[] => [
      { band: name },
      ...findings.map((finding) => ({ cells: cellsOf(finding, photos, unit, language) })),
      ...(notLookedAt.length === 0
        ? []
        : [
            {
              cells: [
                notLookedAt.map((thing) => surveyThings[thing].label).join('; '),
                '',
                { absent: 'not looked at' },
              ],
            },
          ]),
    ]),
  };
}

function cellsOf(
  finding: StandingFinding,
  numbers: ReadonlyMap<string, number>,
  unit: LengthUnit,
  language: Language,
): Cell[] {
  const { thing, place, answer, photos = [], at, by } = finding;
  const head = [surveyThings[thing].label, placeInWords(place, language)];
  const tail = [photos.map((digest) => numbers.get(digest)).join(', '), `${language.day(at)}, ${by}`];
  if (!isSeen(finding)) {
    const note = 'note' in answer && answer.note !== undefined ? `: ${answer.note}` : '';
    const said: Cell = answer.is === 'sound' ? `sound${note}` : { absent: `${answer.is}${note}` };
    return [...head, said, '', '', '', '', ...tail];
  }
  const { what, gravity, whatToDo, extent_m, repair } = finding.answer;
  return [
    ...head,
    repair === undefined ? what : `${what} (earlier repair: ${repair})`,
    gravity,
    whatToDo,
    ...(extent_m === undefined
      ? [{ absent: 'not measured', across: 2 }]
      : lengthCells(extent_m, 'length', unit, language)),
    ...tail,
  ];
}

/** Earlier surveys beside this one; nothing when none was copied. */
export function comparisonBlocks(
  comparison: ComparisonFigures | undefined,
  unit: LengthUnit,
  language: Language,
): Block[] {
  if (comparison === undefined || comparison.days.length === 0) return [];
  return [
    { is: 'heading', level: 2, text: 'Beside earlier surveys' },
    {
      is: 'table',
      title: `Compared with ${comparison.days.map(language.day).join(', ')}`,
      columns: [
        { heading: 'thing', align: 'left', share: 120 },
        { heading: 'place', align: 'left', share: 90 },
        { heading: 'earlier', align: 'left', share: 70 },
        { heading: 'change', align: 'left', share: 90 },
        ...lengthColumns('longer by', unit, [34, 34]),
        { heading: 'in words', align: 'left', share: 250 },
      ],
      rows: comparison.lines.map(({ label, place, earlierDay, change, grownBy, sentence }) => ({
        cells: [
          label,
          placeInWords(place, language),
          earlierDay === undefined ? { absent: 'no line' } : language.day(earlierDay),
          change,
          ...(grownBy === undefined
            ? [{ absent: 'not known', across: 2 }]
            : lengthCells(grownBy, 'length', unit, language)),
          sentence,
        ],
      })),
    },
  ];
}
