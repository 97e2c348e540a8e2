import { type Language, type LengthUnit, type Message, message } from '@becket/core';
import {
  type Amendment,
  type Gap,
  type Job,
  observedThings,
  readingQuantities,
  type StripCheck,
} from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { shortDigest } from '../every-paper/running-lines.ts';
import { readingInWords } from '../figures/readings.ts';
import { shortened } from '../figures/shortened.ts';
import type { Block, Table } from '../page-tree.ts';
import { gapName } from './gap-name.ts';

/** What the record lacks, what changed after the seal, and which files were brought in. */
export function gapsAndChanges(job: Job, check: StripCheck, unit: LengthUnit, language: Language): Block[] {
  const { say } = language;
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('Gaps, changes and files') },
    ...gaps(check, language),
    ...amendments(job, unit, language),
    ...imports(job, language),
    ...(job.withdrawnEntries.size === 0
      ? []
      : [
          {
            is: 'paragraph',
            tone: 'quiet',
            text: say(
              '{count, plural, one {# entry was} other {# entries were}} withdrawn or corrected. They stay in the journal and take no part in this paper.',
              { count: job.withdrawnEntries.size },
            ),
          } as const,
        ]),
  ];
}

function gaps({ gaps: all, openGaps }: StripCheck, language: Language): Block[] {
  const { say, moment } = language;
  const accepted = all.flatMap((gap) =>
    gap.accepted === undefined ? [] : [{ ...gap, accepted: gap.accepted }],
  );
  const blocks: Block[] = [];
  blocks.push({ is: 'heading', level: 3, text: say('Gaps accepted by name') });
  blocks.push(
    accepted.length === 0
      ? { is: 'paragraph', text: say('[gaps] None.') }
      : {
          is: 'table',
          columns: [
            { heading: say('gap'), align: 'left', share: 180 },
            { heading: say('if it stays open'), align: 'left', share: 75 },
            { heading: say('reason'), align: 'left', share: 125 },
            { heading: say('[a gap] accepted'), align: 'left', share: 135 },
          ],
          rows: alikeTogether(accepted).map(({ names, rank, reason, by, at }) => ({
            cells: [
              names.map((name) => gapName(name, language)).join(', '),
              say(rank),
              reason,
              `${by}, ${moment(at)}`,
            ],
          })),
        },
  );
  blocks.push({ is: 'heading', level: 3, text: say('Gaps still open') });
  blocks.push(
    openGaps.length === 0
      ? { is: 'paragraph', text: say('[gaps] None.') }
      : {
          is: 'table',
          columns: [
            { heading: say('gap'), align: 'left', share: 110 },
            { heading: say('if it stays open'), align: 'left', share: 70 },
            { heading: say('what is missing, and what it costs later'), align: 'left', share: 330 },
          ],
          rows: openGaps.map(({ name, rank, sentence }) => ({
            cells: [gapName(name, language), say(rank), sentence],
          })),
        },
  );
  return blocks;
}

/** Enough names for one row: more would fill a page with it. */
const namesInRow = 12;

/** Gaps that were accepted in one go stand in one row, each by its name. */
function alikeTogether(accepted: readonly (Gap & { accepted: NonNullable<Gap['accepted']> })[]) {
  const rows: { names: string[]; rank: Gap['rank']; reason: string; by: string; at: string }[] = [];
  for (const { name, rank, accepted: act } of accepted) {
    const row = rows.at(-1);
    const isAlike = row?.rank === rank && row.reason === act.reason && row.by === act.by && row.at === act.at;
    if (isAlike && row.names.length < namesInRow) row.names.push(name);
    else rows.push({ names: [name], rank, ...act });
  }
  return rows;
}

function amendments(job: Job, unit: LengthUnit, language: Language): Block[] {
  if (job.seal === undefined) return [];
  const { say, moment } = language;
  return [
    { is: 'heading', level: 3, text: say('Amended after the seal') },
    job.amendments.length === 0
      ? { is: 'paragraph', text: say('Nothing.') }
      : {
          is: 'table',
          columns: [
            { heading: say('when'), align: 'left', share: 110 },
            { heading: say('[person] by'), align: 'left', share: 60 },
            { heading: say('what'), align: 'left', share: 180 },
            { heading: say('reason'), align: 'left', share: 160 },
          ],
          rows: job.amendments.map((amendment) => ({
            cells: [
              moment(amendment.at),
              amendment.by,
              amendedInWords(job, amendment, unit, language),
              amendment.reason ?? {
                absent: say('[a reason] none given, from a device that did not know of the seal'),
              },
            ],
          })),
        },
  ];
}

function amendedInWords(job: Job, { entry, kind }: Amendment, unit: LengthUnit, language: Language): string {
  const { say } = language;
  const reading = job.readings.find((one) => one.entry === entry);
  if (reading !== undefined) {
    const values = {
      what: say(readingQuantities[reading.quantity].label),
      place: placeInWords(reading.place, language),
      found: readingInWords(reading, unit, language),
    };
    return reading.replaces === undefined
      ? say('{what}, {place}: {found}', values)
      : say('{what}, {place}: {found}, in place of an earlier reading', values);
  }
  const absence = job.absences.find((one) => one.entry === entry);
  if (absence !== undefined) {
    return say('{what}, {place}: {found}', {
      what: say(readingQuantities[absence.quantity].label),
      place: placeInWords(absence.place, language),
      found: say(absence.answer),
    });
  }
  const observation = job.observations.find((one) => one.entry === entry);
  if (observation !== undefined) {
    const { answer } = observation;
    return say('{what}, {place}: {found}', {
      what: say(observedThings[observation.thing]),
      place: placeInWords(observation.place, language),
      found: answer.is === 'known' ? answer.text : say(answer.is),
    });
  }
  const words = amendedKinds.get(kind);
  return words === undefined ? kind.replaceAll('-', ' ') : say(words);
}

/** Facts of the as-found record that are no reading, no answer and no observation; those of a later program keep their name. */
const amendedKinds = new Map<string, Message>([
  ['withdrawn', message('an earlier entry withdrawn')],
  ['piano-described', message('piano described')],
  ['section-described', message('section described')],
  ['unisons-described', message('unisons described')],
  ['finding', message('finding')],
  ['size-stamp', message('size stamp')],
  ['winding-described', message('winding described')],
  ['wire-path', message('wire path')],
  ['soft-part', message('soft part')],
  ['plate-part', message('plate part')],
  ['sample-kept', message('sample kept')],
  ['readings-imported', message('readings imported')],
  ['photo', message('photo')],
]);

/** A cell of somebody's file can hold a whole page; its beginning is enough to find it again. */
const cellLetters = 200;

function imports({ imports: all }: Job, { say, moment }: Language): Block[] {
  if (all.length === 0) return [];
  const changed = all.flatMap(({ file, changedCells }) => changedCells.map((cell) => ({ file, ...cell })));
  const files: Table = {
    is: 'table',
    columns: [
      { heading: say('file'), align: 'left', share: 150 },
      { heading: say('rows'), align: 'right', share: 40 },
      { heading: say('readings'), align: 'right', share: 50 },
      { heading: say('digest (SHA-256)'), align: 'left', share: 100 },
      { heading: say('brought in'), align: 'left', share: 160 },
    ],
    rows: all.map(({ file, rows, readings, digest, by, at }) => ({
      cells: [file, String(rows), String(readings), shortDigest(digest), `${by}, ${moment(at)}`],
    })),
  };
  const cells: Table = {
    is: 'table',
    title: say('Cells changed or left out when the file was brought in'),
    columns: [
      { heading: say('file'), align: 'left', share: 110 },
      { heading: say('[of a file] row'), align: 'right', share: 30 },
      { heading: say('[of a file] column'), align: 'left', share: 80 },
      { heading: say('[in a file] found'), align: 'left', share: 60 },
      { heading: say('[in place of it] used'), align: 'left', share: 60 },
      { heading: say('reason'), align: 'left', share: 170 },
    ],
    rows: changed.map(({ file, row, column, found, used, reason }) => ({
      cells: [
        file,
        String(row),
        shortened(column, cellLetters),
        shortened(found, cellLetters),
        used === null ? { absent: say('left out') } : shortened(used, cellLetters),
        shortened(reason, cellLetters),
      ],
    })),
  };
  return [
    { is: 'heading', level: 3, text: say('Readings brought in from files') },
    files,
    ...(changed.length === 0 ? [] : [cells]),
  ];
}
