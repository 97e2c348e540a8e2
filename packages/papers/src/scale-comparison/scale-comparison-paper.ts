import { noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { runningLines, shortDigest } from '../every-paper/running-lines.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { type ComparedScales, comparedScales } from './compared-scales.ts';
import { comparisonCharts } from './comparison-charts.ts';
import { beatsTable, changeTable, comparisonForMachines, loadTable, wireTable } from './comparison-tables.ts';
import { plainWords } from './plain-words.ts';

const originLine = 'Lengths and old wire are readings; everything else is calculated from them.';

/**
 * The scale comparison: the scale as found beside the one that is chosen, or proposed last. Its first page is for the owner
 * of the piano; charts, loads and the change list follow for the workshop.
 */
export function scaleComparisonPaper(job: Job, options: PaperOptions): PageTree {
  const compared = comparedScales(job);
  return {
    paper: 'scale comparison',
    title: 'Scale comparison',
    language: options.language.locale,
    orientation: 'portrait',
    running: runningLines(job, originLine, options),
    blocks: [
      { is: 'heading', level: 1, text: 'Scale comparison' },
      ...(compared === undefined ? nothingToCompare(job, options) : firstPage(job, compared, options)),
      ...(compared === undefined ? [] : workshopPages(job, compared, options)),
    ],
    machineTable: comparisonForMachines(compared?.comparison),
  };
}

function nothingToCompare(job: Job, { language }: PaperOptions): Block[] {
  return [
    { is: 'facts', rows: [{ name: 'Job', value: job.title }, ...pianoFacts(job, language)] },
    {
      is: 'box',
      tone: 'note',
      title: 'Nothing to compare yet',
      texts: [
        job.proposals.length === 0
          ? 'No other scale than the one that was found has been proposed.'
          : 'No string of the scale as found can be computed: a note needs its stringing, its wire and its speaking length.',
      ],
    },
  ];
}

function firstPage(job: Job, compared: ComparedScales, { address, language }: PaperOptions): Block[] {
  const { name, chosen } = compared;
  return [
    {
      is: 'paragraph',
      tone: 'lead',
      text: `The scale of a piano is the size and length of each of its strings. The lengths stay as the maker gave them; this paper shows what other sizes of wire would change.`,
    },
    {
      is: 'facts',
      rows: [
        { name: 'Job', value: job.title },
        ...pianoFacts(job, language),
        { name: 'Compared', value: `as found, with “${name}”` },
        ...chosenRows(compared),
      ],
    },
    ...(chosen?.changedSince === undefined
      ? []
      : [{ is: 'box', tone: 'caution', title: 'Choose again', texts: [chosen.changedSince] } as const]),
    { is: 'heading', level: 2, text: 'In plain words' },
    { is: 'list', marks: 'dots', items: plainWords(compared) },
    ...againstBox(compared),
    {
      is: 'box',
      tone: 'note',
      title: 'When to leave a scale alone',
      texts: [
        'An instrument of historic worth keeps its scale unless owner and conservator agree: sizes that are changed cannot be told from the old ones later. A scale that is even already gains little. What plate, bridges and soundboard can bear is not known from this paper: where a load would rise, ask whoever knows the structure.',
        'Nothing here is decided by the figures alone. New strings sound new whichever scale is strung.',
      ],
    },
    ...(address === undefined
      ? []
      : [{ is: 'address code', address, text: 'The job behind this paper, with every reading:' } as const]),
  ];
}

function againstBox({ name, saidAgainst }: ComparedScales): Block[] {
  if (saidAgainst === undefined || saidAgainst.length === 0) return [];
  return [
    {
      is: 'box',
      tone: 'caution',
      title: `What spoke against “${name}” when it was computed`,
      texts: saidAgainst,
    },
  ];
}

function chosenRows({ name, chosen, comparison }: ComparedScales): { name: string; value: string }[] {
  const { breaks } = comparison;
  return [
    {
      name: 'Chosen for stringing',
      value:
        chosen === undefined
          ? 'nothing chosen yet'
          : `${chosen.name === name ? 'this scale' : chosen.name}, because “${chosen.reason}” (scale digest ${shortDigest(chosen.digest)})`,
    },
    {
      name: 'Breaks of the scale',
      value:
        breaks.length === 0
          ? 'none'
          : breaks.map((key) => `between ${noteName(key - 1)} and ${noteName(key)}`).join(', '),
    },
  ];
}

function workshopPages(job: Job, compared: ComparedScales, { firstUnit, language }: PaperOptions): Block[] {
  const { comparison, after } = compared;
  const tables = [...new Set(after.notes.map(({ strengthTable }) => strengthTable))].join(' and ');
  const changes = changeTable(comparison, firstUnit, language);
  const beats = beatsTable(comparison);
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: 'String by string' },
    {
      is: 'paragraph',
      tone: 'quiet',
      text: `Tension at A4 = ${job.piano?.referencePitch_hz ?? 440} Hz and equal temperament. Break load by the table ${tables}. ${after.notes[0]?.strengthRemark ?? ''} B as in f = n·f₁·√(1 + B·n²); wound strings from their exact modes.`,
    },
    ...comparisonCharts(job, compared, firstUnit, language),
    { is: 'page break' },
    { is: 'heading', level: 2, text: 'Loads, beats and wire' },
    loadTable(comparison),
    ...(beats === undefined ? [] : [beats]),
    wireTable(comparison, firstUnit, language),
    ...(changes === undefined
      ? []
      : ([{ is: 'page break' }, { is: 'heading', level: 2, text: 'What changes' }, changes] as const)),
  ];
}
