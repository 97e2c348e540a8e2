import { type Language, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoForOwner } from '../every-paper/piano-facts.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import type { Block, PageTree } from '../page-tree.ts';
import type { AppraisalFigures } from './appraisal-figures.ts';
import { findingsForMachines } from './findings-for-machines.ts';
import {
  photosOfReport,
  sinceTheLastTime,
  whatWeCouldNotSee,
  whatWeFound,
  whatWeLookedAt,
} from './what-we-found.ts';
import { whatWeMeasured } from './what-we-measured.ts';
import { inShort, whatHappensNext, whatWeSuggest } from './what-we-suggest.ts';

/** The appraisal for the owner of the piano, in plain words. The figures behind it are in the technical annex. */
export function appraisalReportPaper(
  job: Job,
  options: PaperOptions,
  figures: AppraisalFigures = {},
): PageTree {
  const { language } = options;
  const { say } = language;
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Appraisal report') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say('What we looked at, what we found, what it means for your piano, and what we suggest.'),
    },
    {
      is: 'facts',
      rows: [
        { name: say('For'), value: job.customer ?? say('not named') },
        ...(job.asks === undefined ? [] : [{ name: say('Asked for'), value: job.asks }]),
        { name: say('Job'), value: sayKnown(job.title, language) },
        ...pianoForOwner(job, language),
        { name: say('Looked at'), value: lookedAt(job, language) },
      ],
    },
    inShort(job, language),
    { is: 'heading', level: 2, text: say('What we looked at') },
    whatWeLookedAt(job, language),
    { is: 'heading', level: 2, text: say('What we found') },
    ...whatWeFound(job, language),
    ...sinceTheLastTime(figures, language),
    { is: 'heading', level: 2, text: say('What we measured') },
    { is: 'list', marks: 'dots', items: whatWeMeasured(job, figures, language) },
    { is: 'heading', level: 2, text: say('What we could not see') },
    ...whatWeCouldNotSee(job, language),
    { is: 'heading', level: 2, text: say('What we suggest') },
    ...whatWeSuggest(job, language),
    { is: 'heading', level: 2, text: say('What happens next') },
    { is: 'list', marks: 'dots', items: whatHappensNext(job, language) },
    cautions(language),
    ...photosOfReport(job, options.firstUnit, language),
  ];
  return {
    paper: 'appraisal report',
    title: say('Appraisal report'),
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(
      job,
      say('What was seen and measured at the visit; the figures are in the technical annex.'),
      options,
    ),
    blocks,
    machineTable: findingsForMachines(job),
  };
}

function lookedAt({ findings, readings }: Job, { say, day, list }: Language): string {
  const own = [
    ...findings.filter(({ copiedFrom }) => copiedFrom === undefined),
    ...readings.filter(({ stage }) => stage === 'as found'),
  ];
  const days = own.map(({ at }) => at).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return say('not yet');
  const [from, to] = [day(first), day(last)];
  const people = [...new Set(own.map(({ by }) => by))].sort();
  return from === to
    ? say('{day}, by {people}', { day: from, people: list(people) })
    : say('{from} to {to}, by {people}', { from, to, people: list(people) });
}

const cautions = ({ say }: Language): Block => ({
  is: 'box',
  tone: 'caution',
  title: say('Until then, please'),
  texts: [
    say(
      'Do not turn the tuning pins, and do not loosen screws of the iron frame: the strings pull with many tonnes, and what comes loose can hurt.',
    ),
    say(
      'Keep the piano away from heaters, sun and damp, and have it moved only by people who move pianos for a living.',
    ),
    say(
      'This report says what a technician could see and measure on a strung piano. Whether iron frame, block and case will bear the work is, in doubt, for a specialist to judge; local rules come first.',
    ),
  ],
});
