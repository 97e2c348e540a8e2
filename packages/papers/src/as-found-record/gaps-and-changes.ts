import {
  type Amendment,
  type Gap,
  type Job,
  observedThings,
  readingQuantities,
  type StripCheck,
} from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { counted, shortDigest } from '../every-paper/running-lines.ts';
import { timeInWords } from '../figures/dates.ts';
import type { LengthUnit } from '../figures/lengths.ts';
import { readingInWords } from '../figures/readings.ts';
import { shortened } from '../figures/shortened.ts';
import type { Block, Table } from '../page-tree.ts';

/** What the record lacks, what changed after the seal, and which files were brought in. */
export function gapsAndChanges(job: Job, check: StripCheck, unit: LengthUnit): Block[] {
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: 'Gaps, changes and files' },
    ...gaps(check),
    ...amendments(job, unit),
    ...imports(job),
    ...(job.withdrawnEntries.size === 0
      ? []
      : [
          {
            is: 'paragraph',
            tone: 'quiet',
            text: `${counted(job.withdrawnEntries.size, 'entry was', 'entries were')} withdrawn or corrected. They stay in the journal and take no part in this paper.`,
          } as const,
        ]),
  ];
}

function gaps({ gaps: all, openGaps }: StripCheck): Block[] {
  const accepted = all.flatMap((gap) =>
    gap.accepted === undefined ? [] : [{ ...gap, accepted: gap.accepted }],
  );
  const blocks: Block[] = [];
  blocks.push({ is: 'heading', level: 3, text: 'Gaps accepted by name' });
  blocks.push(
    accepted.length === 0
      ? { is: 'paragraph', text: 'None.' }
      : {
          is: 'table',
          columns: [
            { heading: 'gap', align: 'left', share: 180 },
            { heading: 'if it stays open', align: 'left', share: 75 },
            { heading: 'reason', align: 'left', share: 125 },
            { heading: 'accepted', align: 'left', share: 135 },
          ],
          rows: alikeTogether(accepted).map(({ names, rank, reason, by, at }) => ({
            cells: [names.join(', '), rank, reason, `${by}, ${timeInWords(at)}`],
          })),
        },
  );
  blocks.push({ is: 'heading', level: 3, text: 'Gaps still open' });
  blocks.push(
    openGaps.length === 0
      ? { is: 'paragraph', text: 'None.' }
      : {
          is: 'table',
          columns: [
            { heading: 'gap', align: 'left', share: 110 },
            { heading: 'if it stays open', align: 'left', share: 70 },
            { heading: 'what is missing, and what it costs later', align: 'left', share: 330 },
          ],
          rows: openGaps.map(({ name, rank, sentence }) => ({ cells: [name, rank, sentence] })),
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

function amendments(job: Job, unit: LengthUnit): Block[] {
  if (job.seal === undefined) return [];
  return [
    { is: 'heading', level: 3, text: 'Amended after the seal' },
    job.amendments.length === 0
      ? { is: 'paragraph', text: 'Nothing.' }
      : {
          is: 'table',
          columns: [
            { heading: 'when', align: 'left', share: 110 },
            { heading: 'by', align: 'left', share: 60 },
            { heading: 'what', align: 'left', share: 180 },
            { heading: 'reason', align: 'left', share: 160 },
          ],
          rows: job.amendments.map((amendment) => ({
            cells: [
              timeInWords(amendment.at),
              amendment.by,
              amendedInWords(job, amendment, unit),
              amendment.reason ?? { absent: 'none given, from a device that did not know of the seal' },
            ],
          })),
        },
  ];
}

function amendedInWords(job: Job, { entry, kind }: Amendment, unit: LengthUnit): string {
  const reading = job.readings.find((one) => one.entry === entry);
  if (reading !== undefined) {
    const replaced = reading.replaces === undefined ? '' : ', in place of an earlier reading';
    return `${readingQuantities[reading.quantity].label}, ${placeInWords(reading.place)}: ${readingInWords(reading, unit)}${replaced}`;
  }
  const absence = job.absences.find((one) => one.entry === entry);
  if (absence !== undefined) {
    return `${readingQuantities[absence.quantity].label}, ${placeInWords(absence.place)}: ${absence.answer}`;
  }
  const observation = job.observations.find((one) => one.entry === entry);
  if (observation !== undefined) {
    const { answer } = observation;
    return `${observedThings[observation.thing]}, ${placeInWords(observation.place)}: ${answer.is === 'known' ? answer.text : answer.is}`;
  }
  return kind === 'withdrawn' ? 'an earlier entry withdrawn' : kind.replaceAll('-', ' ');
}

/** A cell of somebody's file can hold a whole page; its beginning is enough to find it again. */
const cellLetters = 200;

function imports({ imports: all }: Job): Block[] {
  if (all.length === 0) return [];
  const changed = all.flatMap(({ file, changedCells }) => changedCells.map((cell) => ({ file, ...cell })));
  const files: Table = {
    is: 'table',
    columns: [
      { heading: 'file', align: 'left', share: 150 },
      { heading: 'rows', align: 'right', share: 40 },
      { heading: 'readings', align: 'right', share: 50 },
      { heading: 'digest (SHA-256)', align: 'left', share: 100 },
      { heading: 'brought in', align: 'left', share: 160 },
    ],
    rows: all.map(({ file, rows, readings, digest, by, at }) => ({
      cells: [file, String(rows), String(readings), shortDigest(digest), `${by}, ${timeInWords(at)}`],
    })),
  };
  const cells: Table = {
    is: 'table',
    title: 'Cells changed or left out when the file was brought in',
    columns: [
      { heading: 'file', align: 'left', share: 110 },
      { heading: 'row', align: 'right', share: 30 },
      { heading: 'column', align: 'left', share: 80 },
      { heading: 'found', align: 'left', share: 60 },
      { heading: 'used', align: 'left', share: 60 },
      { heading: 'reason', align: 'left', share: 170 },
    ],
    rows: changed.map(({ file, row, column, found, used, reason }) => ({
      cells: [
        file,
        String(row),
        shortened(column, cellLetters),
        shortened(found, cellLetters),
        used === null ? { absent: 'left out' } : shortened(used, cellLetters),
        shortened(reason, cellLetters),
      ],
    })),
  };
  return [
    { is: 'heading', level: 3, text: 'Readings brought in from files' },
    files,
    ...(changed.length === 0 ? [] : [cells]),
  ];
}
