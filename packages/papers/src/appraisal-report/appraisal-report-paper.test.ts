import { type Job, surveyParts, surveyThings } from '@becket/journal';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { BulletList, PageTree } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { appraisalFigures } from '../testing/appraisal-figures.ts';
import { appraisedJob } from '../testing/appraised-job.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import type { AppraisalFigures } from './appraisal-figures.ts';
import { appraisalReportPaper } from './appraisal-report-paper.ts';
import { meaningOf, partInPlainWords } from './plain-words.ts';

const options = { ...testOptions, isSealIntact: undefined };
const tree = appraisalReportPaper(appraisedJob(), options, appraisalFigures());
const empty = appraisalReportPaper(appraisedJob({ isEmpty: true }), { ...options, address: undefined });
/** As a task says it. */
const germanComparison: AppraisalFigures['comparison'] = {
  days: ['2019-05-03'],
  lines: [
    {
      label: 'Risse an den Stegstiften',
      place: { section: 'treble', key: 40 },
      earlierDay: '2019-05-03',
      change: 'grew',
      grownBy: undefined,
      sentence: 'Risse an den Stegstiften, C4: 21 mm länger als am 3. Mai 2019.',
    },
  ],
};
const itemsUnder = ({ blocks }: PageTree, heading: string): readonly string[] => {
  const at = blocks.findIndex((block) => block.is === 'heading' && block.text === heading);
  return blocks.slice(at).find((block): block is BulletList => block.is === 'list')?.items ?? [];
};
const shortOf = ({ blocks }: PageTree) =>
  blocks.flatMap((block) => (block.is === 'box' && block.tone === 'note' ? [block] : []))[0]!;
const plain = (text: string) => text.replace(/\s/gu, ' ');
const withReadings = (change: (job: Job) => Job['readings']) => {
  const job = appraisedJob();
  return itemsUnder(appraisalReportPaper({ ...job, readings: change(job) }, options), 'What we measured');
};

describe('appraisalReportPaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(tree, null, 1)).toMatchFileSnapshot('../saved-trees/appraisal-report.json');
    await expect(JSON.stringify(empty, null, 1)).toMatchFileSnapshot(
      '../saved-trees/appraisal-report-empty.json',
    );
  });

  it('is written in German for who reads German', async () => {
    const figures = appraisalFigures(germanOptions.language);
    const german = appraisalReportPaper(
      appraisedJob(),
      { ...germanOptions, isSealIntact: undefined },
      { ...figures, comparison: germanComparison },
    );
    await expect(JSON.stringify(german, null, 1)).toMatchFileSnapshot(
      '../saved-trees/appraisal-report-german.json',
    );
    expect(german.language).toBe('de-DE');
    expect(itemsUnder(german, 'Was wir gemessen haben')[0]).toContain('31 bis 45 Hundertstel Halbton unter');
  });

  it('puts decision, findings and price at its head', () => {
    const { title, texts } = shortOf(tree);
    expect(title).toBe('We suggest new strings, on conditions');
    expect(texts.map(plain)).toEqual([
      'The plate is sound and the board rings; the bridge can be mended.',
      '3 things were found, 1 of them serious; 1 point could not be seen.',
      'The work would cost between EUR 1,839.20 and EUR 3,322.74, depending on what is found, tax included (estimate, version 1).',
    ]);
  });

  it('explains every part and every thing that a survey can speak of', () => {
    expect(Object.keys(partInPlainWords).sort()).toEqual(Object.keys(surveyParts).sort());
    expect(Object.keys(meaningOf).sort()).toEqual(Object.keys(surveyThings).sort());
    for (const words of Object.values(meaningOf)) expect(words).toMatch(/^[A-Z].*\.$/);
  });

  it('tells each thing found with its place, size, gravity, remedy and photo', () => {
    expect(itemsUnder(tree, 'Bridges')).toEqual([
      'Cracks at the bridge pins (section treble, C4): a crack runs through the pins of three notes. Serious, about 6 cm. It has to be mended before new strings go on. Photo 1.',
    ]);
    expect(itemsUnder(tree, 'Soundboard')[0]).toContain(
      'Whether the earlier repair holds cannot be told yet.',
    );
  });

  it('shows the photos by the numbers that the text names, and says which are gone', () => {
    const photos = ({ blocks }: PageTree) =>
      blocks.flatMap((block) => (block.is === 'photos' ? block.photos.map(({ title }) => title) : []));
    expect(photos(tree)).toEqual(['Photo 1: bridge from above', 'Photo 2: old shim in the board']);
    const job = appraisedJob();
    const gone = appraisalReportPaper({ ...job, photos: job.photos.slice(1) }, options);
    expect(photos(gone)).toEqual(['Photo 2: old shim in the board']);
    expect(JSON.stringify(gone)).toContain('No longer with the job: photo 1.');
  });

  it('keeps sound, not to be seen, not looked at and does not apply apart', () => {
    const unseen = itemsUnder(tree, 'What we could not see');
    expect(unseen[0]).toBe('Layers of the pin block parting (whole piano): the plate covers it.');
    expect(unseen.join()).not.toContain('pressure bar');
    expect(unseen.join()).not.toContain('cracks in the plate');
    expect(unseen).toContain('Plate, not looked at: plate bolts and screws.');
    expect(unseen.at(-1)).toBe('Not looked at at all: ribs, from beneath; action.');
  });

  it('does not take a line copied from an earlier survey for something seen now', () => {
    const job = appraisedJob();
    const findings = job.findings.map((one) => ({ ...one, copiedFrom: '2019-05-03' }));
    const text = JSON.stringify(appraisalReportPaper({ ...job, findings }, options).blocks);
    expect(text).not.toContain('three notes');
    expect(text.match(/The piano was not surveyed yet/g)).toHaveLength(2);
  });

  it('says how far the piano is from its pitch, below, above or on both sides', () => {
    const offsets = (...values: number[]) =>
      withReadings(({ readings }) => {
        const [one] = readings.filter(({ quantity }) => quantity === 'pitch-offset');
        return values.map((value_si) => ({ ...one!, value_si }));
      })[0];
    expect(offsets(-38, -31)).toContain('stands 31 to 38 hundredths of a semitone below its pitch');
    expect(offsets(-5, 3)).toContain('between 5 hundredths of a semitone below its pitch and 3 above');
    expect(offsets(7)).toContain('Measured at one note, the piano stands 7 hundredths of a semitone above');
    expect(offsets(0.2)).toContain('at its pitch');
    expect(offsets()).toBe('How far the piano has gone from its pitch was not measured yet.');
  });

  it('says that nothing is known where nothing is, and makes no sentence up', () => {
    const text = JSON.stringify(empty);
    expect(shortOf(empty).title).toBe('Nothing is decided yet');
    for (const words of [
      'not surveyed yet',
      'not measured yet',
      'not worked out yet',
      'not looked at yet',
      'not described yet',
    ])
      expect(text).toContain(words);
    expect(text).not.toMatch(/undefined|NaN|null/);
  });

  it('follows the decision and the answer in what happens next', () => {
    const next = (job: Job) => itemsUnder(appraisalReportPaper(job, options), 'What happens next')[0];
    const job = appraisedJob();
    expect(next(job)).toContain('You answer the estimate');
    expect(next(appraisedJob({ estimate: 'none' }))).toBe('You receive an estimate.');
    expect(next(appraisedJob({ estimate: 'accepted' }))).toContain('You have accepted');
    expect(next(appraisedJob({ estimate: 'made anew' }))).toContain('You answer the estimate');
    const stop = job.decisions.map((one) => ({ ...one, verdict: 'stop' as const }));
    expect(next({ ...job, decisions: stop })).toBe('Nothing is done to the piano.');
    expect(next({ ...job, decisions: [] })).toBe('We settle what is still open.');
  });

  it('names what changed since an earlier survey, and leaves out what did not', () => {
    expect(itemsUnder(tree, 'Since the survey of 3 May 2019')).toEqual([
      'Cracks at the bridge pins, C4: 21 mm longer than on 3 May 2019.',
    ]);
  });

  it('cautions, and leaves structure to specialists and local rules', () => {
    const box = tree.blocks.find((block) => block.is === 'box' && block.tone === 'caution');
    expect(JSON.stringify(box)).toMatch(/specialist.*local rules/);
  });

  it('gives the survey to machines, one row a line with its own answer', () => {
    const { data, errors } = Papa.parse<Record<string, string>>(renderCsv(tree), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(appraisedJob().findings.length);
    expect(data[0]).toMatchObject({ note: 'C4', answer: 'seen', extent_m: '0.062', gravity: 'grave' });
    expect(data.map(({ answer }) => answer)).toContain('does not apply');
  });
});
