import type { Language, LengthUnit } from '@becket/core';
import { type Job, surveyThings } from '@becket/journal';
import type { ComparisonFigures } from '../appraisal-report/appraisal-figures.ts';
import {
  isSeen,
  numberedPhotos,
  type StandingFinding,
  surveyByPart,
} from '../appraisal-report/survey-state.ts';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { lengthCells, lengthColumns } from '../figures/lengths.ts';
import type { Block, Cell, Table, TableRow } from '../page-tree.ts';

/** Every line of the survey under its part; a part that nobody looked at says so. */
export function surveyTable(job: Job, unit: LengthUnit, language: Language): Table {
  const { say } = language;
  const photos = numberedPhotos(job);
  return {
    is: 'table',
    title: say('Survey'),
    remarks: [
      say(
        'Sound, could not be seen and does not apply are answers of their own. Extent: how long or wide it is, as measured. Photo: its number in the appraisal report.',
      ),
    ],
    columns: [
      { heading: say('[something seen] thing'), align: 'left', share: 120 },
      { heading: say('place'), align: 'left', share: 90 },
      { heading: say('[in a survey] found'), align: 'left', share: 160 },
      { heading: say('gravity'), align: 'left', share: 40 },
      { heading: say('what to do'), align: 'left', share: 90 },
      ...lengthColumns(say('extent'), unit, [30, 30]),
      { heading: say('photo'), align: 'centre', share: 32 },
      { heading: say('[a line] noted'), align: 'left', share: 120, tone: 'quiet' },
    ],
    rows: surveyByPart(job).flatMap(({ name, findings, notLookedAt }): TableRow[] => [
      { band: say(name) },
      ...findings.map((finding) => ({ cells: cellsOf(finding, photos, unit, language) })),
      ...(notLookedAt.length === 0
        ? []
        : [
            {
              cells: [
                notLookedAt.map((thing) => say(surveyThings[thing].label)).join('; '),
                '',
                { absent: say('not looked at') },
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
  const { say } = language;
  const { thing, place, answer, photos = [], at, by } = finding;
  const head = [say(surveyThings[thing].label), placeInWords(place, language)];
  const tail = [photos.map((digest) => numbers.get(digest)).join(', '), `${language.day(at)}, ${by}`];
  if (!isSeen(finding)) {
    const note = 'note' in answer && answer.note !== undefined ? `: ${answer.note}` : '';
    const said: Cell =
      answer.is === 'sound' ? `${say('sound')}${note}` : { absent: `${say(answer.is)}${note}` };
    return [...head, said, '', '', '', '', ...tail];
  }
  const { what, gravity, whatToDo, extent_m, repair } = finding.answer;
  return [
    ...head,
    repair === undefined ? what : say('{what} (earlier repair: {repair})', { what, repair: say(repair) }),
    say(gravity),
    say(whatToDo),
    ...(extent_m === undefined
      ? [{ absent: say('not measured'), across: 2 }]
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
  const { say } = language;
  if (comparison === undefined || comparison.days.length === 0) return [];
  return [
    { is: 'heading', level: 2, text: say('Beside earlier surveys') },
    {
      is: 'table',
      title: say('Compared with {days}', { days: comparison.days.map(language.day).join(', ') }),
      columns: [
        { heading: say('[something seen] thing'), align: 'left', share: 120 },
        { heading: say('place'), align: 'left', share: 90 },
        { heading: say('[in an earlier survey] earlier'), align: 'left', share: 70 },
        { heading: say('[since an earlier survey] change'), align: 'left', share: 90 },
        ...lengthColumns(say('longer by'), unit, [34, 34]),
        { heading: say('in words'), align: 'left', share: 250 },
      ],
      rows: comparison.lines.map(({ label, place, earlierDay, change, grownBy, sentence }) => ({
        cells: [
          label,
          placeInWords(place, language),
          earlierDay === undefined
            ? { absent: say('[in an earlier survey] no line') }
            : language.day(earlierDay),
          say(change),
          ...(grownBy === undefined
            ? [{ absent: say('not known'), across: 2 }]
            : lengthCells(grownBy, 'length', unit, language)),
          sentence,
        ],
      })),
    },
  ];
}
