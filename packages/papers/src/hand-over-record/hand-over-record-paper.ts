import { type Language, type LengthUnit, message } from '@becket/core';
import type { HandOver, Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { photosBlock, printedPhoto } from '../every-paper/printed-photo.ts';
import { runningLines, sealBox } from '../every-paper/running-lines.ts';
import type { Block, FactList, PageTree } from '../page-tree.ts';
import { bearingBlocks, pitchBlocks, torqueBlocks } from './final-readings.ts';
import type { HandOverFigures } from './hand-over-figures.ts';
import { stringsForMachines, stringsTable } from './strings-table.ts';

/** What an owner is told at the least; the same words are offered on the screen. Common practice, no source. */
export const commonCautions = [
  message(
    'New strings stretch: the piano goes flat several times in its first year, and needs a tuning each time.',
  ),
  message('The strings pull with many tonnes together. Leave pins, strings and plate to a technician.'),
  message(
    'Dry and damp air move the pitch, and can damage the soundboard and the block: keep both away from the piano.',
  ),
] as const;

/**
 * The hand-over record: what was done, the strings that are on, torque, bearing and pitch as they were left, what deviates,
 * what was left alone, what is still open, and how to care for the piano. Until it is handed over it is a draft, and says so.
 */
export function handOverRecordPaper(job: Job, options: PaperOptions, figures: HandOverFigures): PageTree {
  const { language, firstUnit: unit, isSealIntact } = options;
  const { say } = language;
  const { handOver } = figures;
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Hand-over record') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        'How this piano was left after it was restrung, for its owner and for the next technician. What is not known is said to be unknown.',
      ),
    },
    {
      is: 'facts',
      rows: [
        ...firstFacts(job, handOver, language),
        { name: say('Digest of the strings'), value: figures.scaleDigest },
      ],
    },
    ...stateBoxes(figures, language),
    // What an open record says of the old strings has no place here; that it is open stands below and at the foot.
    ...(job.seal === undefined ? [] : [sealBox(job, isSealIntact, language)]),
    { is: 'heading', level: 2, text: say('What was done') },
    ...listOr(figures.done, say('Nothing was recorded.')),
    { is: 'heading', level: 2, text: say('Cautions and care') },
    ...careBlocks(handOver, language),
    { is: 'heading', level: 2, text: say('Still open') },
    ...listOr(figures.stillOpen, say('Nothing that the record asks for is open.')),
    { is: 'heading', level: 2, text: say('Where it deviates from the chosen scale') },
    ...deviationBlocks(figures, language),
    { is: 'heading', level: 2, text: say('Left alone') },
    ...leftAloneBlocks(handOver, language),
    {
      is: 'signature lines',
      names: [say('day'), say('[hand-over] handed over by'), say('[hand-over] taken by')],
    },
    { is: 'heading', level: 2, text: say('The strings that are on') },
    ...stringsTable(job, figures, unit, language),
    { is: 'heading', level: 2, text: say('Torque of the tuning pins, as strung') },
    ...torqueBlocks(figures.torque, unit, language),
    { is: 'heading', level: 2, text: say('Bearing, as strung') },
    ...bearingBlocks(figures.bearing, unit, language),
    { is: 'heading', level: 2, text: say('Pitch as it was left') },
    ...pitchBlocks(figures.pitch, language),
    ...photoBlocks(job, unit, language),
  ];
  return {
    paper: 'hand-over record',
    title: say('Hand-over record'),
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(
      job,
      say(
        'Sizes are measured on the new wire where it says so; elsewhere they are those that were chosen, or found.',
      ),
      options,
    ),
    blocks,
    machineTable: stringsForMachines(job, figures),
  };
}

function photoBlocks({ photos }: Job, unit: LengthUnit, language: Language): Block[] {
  const { say } = language;
  const own = photos.filter(({ stage }) => stage === 'as strung');
  return [
    { is: 'heading', level: 2, text: say('Photos of the new work') },
    own.length === 0
      ? { is: 'paragraph', text: say('No photo of the new work was kept.') }
      : photosBlock(
          own.map((photo) => printedPhoto(photo, unit, language)),
          language,
        ),
  ];
}

function firstFacts(job: Job, handOver: HandOver | undefined, language: Language): FactList['rows'] {
  const { say, day } = language;
  return [
    { name: say('Job'), value: job.title },
    { name: say('Customer'), value: job.customer ?? say('not named') },
    ...pianoFacts(job, language),
    {
      name: say('Handed over'),
      value:
        handOver === undefined
          ? say('not yet')
          : say('on {day} to {name}', { day: day(handOver.on), name: handOver.to }),
    },
    { name: say('Answered for by'), value: handOver?.signedBy ?? say('nobody yet') },
  ];
}

function stateBoxes({ handOver, changedSince }: HandOverFigures, { say }: Language): Block[] {
  const boxes: Block[] = [];
  if (handOver === undefined)
    boxes.push({
      is: 'box',
      tone: 'note',
      title: say('A draft'),
      texts: [
        say('This piano has not been handed over. What stands here is as the job is now, and may change.'),
      ],
    });
  if (changedSince !== undefined)
    boxes.push({
      is: 'box',
      tone: 'caution',
      title: say('Changed since the hand-over'),
      texts: [changedSince],
    });
  return boxes;
}

const listOr = (items: readonly string[], otherwise: string): Block[] => [
  items.length === 0 ? { is: 'paragraph', text: otherwise } : { is: 'list', marks: 'dots', items },
];

function careBlocks(handOver: HandOver | undefined, { say, day }: Language): Block[] {
  const notSaid = say('nothing said');
  const cautions = handOver?.cautions ?? [];
  const care = handOver?.aftercare;
  return [
    ...(cautions.length === 0
      ? [{ is: 'paragraph', text: say('No caution was given yet.') } as const]
      : [{ is: 'box', tone: 'caution', title: say('Please mind'), texts: cautions } as const]),
    {
      is: 'facts',
      rows: [
        { name: say('Air to keep it in'), value: care?.climate ?? notSaid },
        {
          name: say('To be tuned on'),
          value: care === undefined || care.tuneOn.length === 0 ? notSaid : care.tuneOn.map(day).join('; '),
        },
        ...(care?.further === undefined ? [] : [{ name: say('Also'), value: care.further }]),
        ...(handOver?.note === undefined ? [] : [{ name: say('[a remark] Note'), value: handOver.note }]),
      ],
    },
  ];
}

function deviationBlocks({ deviations, scale }: HandOverFigures, { say }: Language): Block[] {
  if (scale.chosen === undefined)
    return [{ is: 'paragraph', text: say('No scale was chosen: there is nothing to compare with.') }];
  const measured = scale.notes.filter(({ from }) => from === 'measured').length;
  if (measured === 0)
    return [{ is: 'paragraph', text: say('Unknown: the new wire was measured at no note.') }];
  if (deviations.length === 0)
    return [
      {
        is: 'paragraph',
        text: say(
          'None at the {measured, plural, one {# note} other {# notes}} whose new wire was measured.',
          {
            measured,
          },
        ),
      },
    ];
  return [
    {
      is: 'table',
      columns: [
        { heading: say('[a deviation] what'), align: 'left', share: 100 },
        { heading: say('because'), align: 'left', share: 90 },
      ],
      rows: deviations.map(({ what, because }) => ({
        cells: [what, because ?? { absent: say('no reason given') }],
      })),
    },
  ];
}

function leftAloneBlocks(handOver: HandOver | undefined, { say }: Language): Block[] {
  const lines = handOver?.leftAlone ?? [];
  if (lines.length === 0)
    return [
      {
        is: 'paragraph',
        text: handOver === undefined ? say('Nothing said yet.') : say('Nothing was named.'),
      },
    ];
  return [
    {
      is: 'table',
      columns: [
        { heading: say('[left alone] what'), align: 'left', share: 90 },
        { heading: say('because'), align: 'left', share: 100 },
      ],
      rows: lines.map(({ what, because }) => ({ cells: [what, because] })),
    },
  ];
}
