import type { Language } from '@becket/core';
import { asFoundRecord, type Job, stripCheck } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { compassCharts } from './compass-charts.ts';
import { firstPage } from './first-page.ts';
import { gapsAndChanges } from './gaps-and-changes.ts';
import { instrumentsTable } from './instruments.ts';
import { photosChapter } from './photos-chapter.ts';
import { recordForMachines } from './record-for-machines.ts';
import { sectionChapter, wholePianoChapter } from './section-chapter.ts';

/** The as-found record: what the piano was before the strip, as far as it is known, and what is not. */
export function asFoundRecordPaper(job: Job, options: PaperOptions): PageTree {
  const { notes } = asFoundRecord(job);
  const check = stripCheck(job, options.language);
  const { firstUnit: unit, language } = options;
  const inSections = job.sections.map((section) => ({
    section,
    notes: notes.filter((note) => note.section === section),
  }));
  const charts = compassCharts(job, notes, unit, language);
  const blocks: Block[] = [
    ...firstPage(job, notes, check, options),
    howToRead(language),
    ...instrumentsTable(job, language),
    ...(charts.length === 0
      ? []
      : [
          { is: 'page break' } as const,
          { is: 'heading', level: 2, text: language.say('The stringing at a glance') } as const,
          ...charts,
        ]),
    ...inSections.flatMap(({ section, notes: own }) => sectionChapter(job, section, own, unit, language)),
    ...wholePianoChapter(
      job,
      notes.filter((note) => note.section === undefined),
      unit,
      language,
    ),
    ...photosChapter(job, unit, language),
    ...gapsAndChanges(job, check, unit, language),
  ];
  return {
    paper: 'as-found record',
    title: language.say('As-found record'),
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(job, language.say(originLine), options),
    blocks,
    machineTable: recordForMachines(notes),
  };
}

const howToRead = ({ say }: Language): Block => ({
  is: 'paragraph',
  tone: 'quiet',
  text: say(
    'How to read this paper. Unknown: it is there, and somebody looked, but it could not be read. None: it is not there. Does not apply: the question makes no sense at this place. Not read: nobody has said anything of it yet; where it is needed, a line is left to write on. n: readings that a figure rests on; u: its standard uncertainty (JCGM 100:2008); spread: highest less lowest reading, which one reading alone does not have. Days and times are in UTC.',
  ),
});
