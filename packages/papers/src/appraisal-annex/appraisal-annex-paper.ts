import { sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { AppraisalFigures } from '../appraisal-report/appraisal-figures.ts';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { runningLines, sealBox } from '../every-paper/running-lines.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { adviceBlocks, unknownBlocks } from './advice-blocks.ts';
import { pinBlocks } from './pin-blocks.ts';
import { visitReadings } from './readings-table.ts';
import { comparisonBlocks, surveyTable } from './survey-tables.ts';
import { torqueBlocks } from './torque-blocks.ts';
import { torqueForMachines } from './torque-for-machines.ts';

/** The figures behind the appraisal report, for a technician. */
export function appraisalAnnexPaper(
  job: Job,
  options: PaperOptions,
  figures: AppraisalFigures = {},
): PageTree {
  const { firstUnit: unit, language } = options;
  const { say } = language;
  const cautions = [...new Set([...(figures.advice?.cautions ?? []), ...(figures.pins?.cautions ?? [])])];
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Technical annex') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        'The survey, the readings and the figures that the appraisal report rests on, and what is still unknown.',
      ),
    },
    {
      is: 'facts',
      rows: [{ name: say('Job'), value: sayKnown(job.title, language) }, ...pianoFacts(job, language)],
    },
    sealBox(job, options.isSealIntact, language),
    { is: 'heading', level: 2, text: say('What was seen') },
    surveyTable(job, unit, language),
    ...comparisonBlocks(figures.comparison, unit, language),
    ...visitReadings(job, unit, language),
    ...torqueBlocks(figures.torque, unit, language),
    ...pinBlocks(figures.pins, unit, language),
    ...adviceBlocks(job, figures.advice, language),
    ...unknownBlocks(figures.advice, language),
    ...(cautions.length === 0
      ? []
      : [{ is: 'box', tone: 'caution', title: say('Careful'), texts: cautions } as const]),
  ];
  return {
    paper: 'appraisal annex',
    title: say('Technical annex'),
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(job, say(originLine), options),
    blocks,
    machineTable: torqueForMachines(figures.torque),
  };
}
