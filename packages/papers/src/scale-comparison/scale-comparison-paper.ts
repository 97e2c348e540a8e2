import { type Language, message, noteName, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { runningLines, shortDigest } from '../every-paper/running-lines.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { type ComparedScales, comparedScales } from './compared-scales.ts';
import { comparisonCharts } from './comparison-charts.ts';
import { beatsTable, changeTable, comparisonForMachines, loadTable, wireTable } from './comparison-tables.ts';
import { plainWords } from './plain-words.ts';

const originLine = message('Lengths and old wire are readings; everything else is calculated from them.');

/**
 * The scale comparison: the scale as found beside the one that is chosen, or proposed last. Its first page is for the owner
 * of the piano; charts, loads and the change list follow for the workshop.
 */
export function scaleComparisonPaper(job: Job, options: PaperOptions): PageTree {
  const { say } = options.language;
  const compared = comparedScales(job, options.language);
  return {
    paper: 'scale comparison',
    title: say('Scale comparison'),
    language: options.language.locale,
    orientation: 'portrait',
    running: runningLines(job, say(originLine), options),
    blocks: [
      { is: 'heading', level: 1, text: say('Scale comparison') },
      ...(compared === undefined ? nothingToCompare(job, options) : firstPage(job, compared, options)),
      ...(compared === undefined ? [] : workshopPages(job, compared, options)),
    ],
    machineTable: comparisonForMachines(compared?.comparison),
  };
}

function nothingToCompare(job: Job, { language }: PaperOptions): Block[] {
  const { say } = language;
  return [
    {
      is: 'facts',
      rows: [{ name: say('Job'), value: sayKnown(job.title, language) }, ...pianoFacts(job, language)],
    },
    {
      is: 'box',
      tone: 'note',
      title: say('Nothing to compare yet'),
      texts: [
        job.proposals.length === 0
          ? say('No other scale than the one that was found has been proposed.')
          : say(
              'No string of the scale as found can be computed: a note needs its stringing, its wire and its speaking length.',
            ),
      ],
    },
  ];
}

function firstPage(job: Job, compared: ComparedScales, { language }: PaperOptions): Block[] {
  const { say } = language;
  const { name, chosen } = compared;
  return [
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        'The scale of a piano is the size and length of each of its strings. The lengths stay as the maker gave them; this paper shows what other sizes of wire would change.',
      ),
    },
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: sayKnown(job.title, language) },
        ...pianoFacts(job, language),
        { name: say('Compared'), value: say('as found, with “{name}”', { name }) },
        { name: say('Proof'), value: proofInWords(compared, language) },
        ...chosenRows(compared, language),
      ],
    },
    ...(chosen?.changedSince === undefined
      ? []
      : [{ is: 'box', tone: 'caution', title: say('Choose again'), texts: [chosen.changedSince] } as const]),
    { is: 'heading', level: 2, text: say('In plain words') },
    { is: 'list', marks: 'dots', items: plainWords(compared, language) },
    ...againstBox(compared, language),
    {
      is: 'box',
      tone: 'note',
      title: say('When to leave a scale alone'),
      texts: [
        say(
          'An instrument of historic worth keeps its scale unless owner and conservator agree: sizes that are changed cannot be told from the old ones later. A scale that is even already gains little. What plate, bridges and soundboard can bear is not known from this paper: where a load would rise, ask whoever knows the structure.',
        ),
        say('Nothing here is decided by the figures alone. New strings sound new whichever scale is strung.'),
      ],
    },
  ];
}

/** What is proved of the answer, as it was said where it was proposed. */
function proofInWords({ mostBetter }: ComparedScales, { say, fixed }: Language): string {
  if (mostBetter === undefined)
    return say('none: it was made or changed by hand, or kept without what was proved of it');
  if (mostBetter === 0)
    return say('Proved: by the weights and limits it was computed with, no other choice of sizes is better.');
  // Rounded up: what is left unproved is never said to be less than it is.
  return say('Not proved to be the best: a better one could lower its sum by {share} % at most.', {
    share: fixed(Math.ceil(mostBetter * 1000) / 10, 1),
  });
}

function againstBox({ name, saidAgainst }: ComparedScales, { say }: Language): Block[] {
  if (saidAgainst === undefined || saidAgainst.length === 0) return [];
  return [
    {
      is: 'box',
      tone: 'caution',
      title: say('What spoke against “{name}” when it was computed', { name }),
      texts: saidAgainst,
    },
  ];
}

function chosenRows(
  { name, chosen, comparison }: ComparedScales,
  { say }: Language,
): { name: string; value: string }[] {
  const { breaks } = comparison;
  return [
    {
      name: say('Chosen for stringing'),
      value:
        chosen === undefined
          ? say('nothing chosen yet')
          : say('{scale}, because “{reason}” (scale digest {digest})', {
              scale: chosen.name === name ? say('this scale') : chosen.name,
              reason: chosen.reason,
              digest: shortDigest(chosen.digest),
            }),
    },
    {
      name: say('Breaks of the scale'),
      value:
        breaks.length === 0
          ? say('none')
          : breaks
              .map((key) =>
                say('between {lower} and {upper}', { lower: noteName(key - 1), upper: noteName(key) }),
              )
              .join(', '),
    },
  ];
}

function workshopPages(job: Job, compared: ComparedScales, { firstUnit, language }: PaperOptions): Block[] {
  const { comparison, after } = compared;
  const { say, plain, list } = language;
  const tables = [...new Set(after.notes.map(({ strengthTable }) => strengthTable))];
  const remark = after.notes[0]?.strengthRemark;
  const changes = changeTable(comparison, firstUnit, language);
  const beats = beatsTable(comparison, language);
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('String by string') },
    {
      is: 'paragraph',
      tone: 'quiet',
      text: [
        say('Tension at A4 = {pitch} Hz and equal temperament. Break load by the table {tables}.', {
          pitch: plain(job.piano?.referencePitch_hz ?? 440),
          tables: list(tables.map((name) => sayKnown(name, language))),
        }),
        remark === undefined ? '' : sayKnown(remark, language),
        say('B as in f = n·f₁·√(1 + B·n²); wound strings from their exact modes.'),
      ].join(' '),
    },
    ...comparisonCharts(job, compared, firstUnit, language),
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('Loads, beats and wire') },
    loadTable(comparison, language),
    ...(beats === undefined ? [] : [beats]),
    wireTable(comparison, firstUnit, language),
    ...(changes === undefined
      ? []
      : ([{ is: 'page break' }, { is: 'heading', level: 2, text: say('What changes') }, changes] as const)),
  ];
}
