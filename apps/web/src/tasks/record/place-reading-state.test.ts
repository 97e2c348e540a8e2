import { stripCheck } from '@becket/journal';
import { readJob, type TaskContext } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { keepInPlaceOf } from './keep-in-place-of.ts';
import { type PlaceReadingForm, placeReadingsOf, sampleOf } from './parts-state.ts';
import {
  keepPlaceReading,
  type PlaceEntry,
  type PlaceForm,
  placeAnswersOf,
  placeForm,
} from './place-reading-state.ts';

const around = { section: 'tenor', firstSection: 'bass', screenUnit: 'mm' } as const;
const keep = (
  context: TaskContext,
  id: string,
  form: Partial<PlaceForm & Pick<PlaceReadingForm, 'unit'>>,
  before?: PlaceEntry,
  isWholePiano = false,
) =>
  keepPlaceReading(
    context,
    id,
    { ...placeForm(before, around), unit: 'mm', ...form },
    { before, screenUnit: 'mm', isWholePiano, said: {} },
  );

describe('a reading here and there', () => {
  it('is answered where nothing can be read, and the strip check takes the answer', async () => {
    const context = testContext();
    const id = await testJob(context);
    const gaps = async () => stripCheck(await readJob(context, id)).gaps.map(({ name }) => name);
    expect(await gaps()).toContain('pitch-offset/piano');
    await keep(
      context,
      id,
      { quantity: 'pitch-offset', answer: 'unknown', why: 'no string holds' },
      undefined,
      true,
    );
    // Unknown says that somebody looked in vain: the gap stays.
    expect(await gaps()).toContain('pitch-offset/piano');
    const [unknown] = placeAnswersOf(await readJob(context, id), undefined);
    expect(unknown).toMatchObject({ place: {}, answer: 'unknown', reason: 'no string holds' });
    await keep(context, id, { answer: 'does not apply', why: '' }, unknown, true);
    expect(placeAnswersOf(await readJob(context, id), undefined)).toMatchObject([
      { answer: 'does not apply' },
    ]);
    expect(await gaps()).not.toContain('pitch-offset/piano');
  });

  it('is answered of a section, or of a note of it', async () => {
    const context = testContext();
    const id = await testJob(context);
    await keep(context, id, { quantity: 'pressure-bar-height', answer: 'none', section: 'tenor' });
    await keep(context, id, { quantity: 'pin-height', answer: 'unknown', note: 'C4', point: 'at the strut' });
    expect(placeAnswersOf(await readJob(context, id), 'tenor').map(({ place }) => place)).toEqual([
      { section: 'tenor' },
      { key: 40, point: 'at the strut' },
    ]);
  });

  it('is corrected with what was said of it, and the reading before leaves the record', async () => {
    const context = testContext();
    const id = await testJob(context);
    await keep(context, id, { value: '1.2', note: 'C4', span: '100', loaded: 'loaded' });
    const [first] = placeReadingsOf(await readJob(context, id), 'tenor');
    expect(placeForm(first, around)).toMatchObject({
      value: '1.2',
      note: 'C4',
      span: '100.0 mm',
      loaded: 'loaded',
    });
    await keep(context, id, { value: '1.4' }, first);
    const [second, ...more] = placeReadingsOf(await readJob(context, id), 'tenor');
    expect(more).toEqual([]);
    expect(second).toMatchObject({ asRead: { value: 1.4 }, place: { key: 40 }, span_m: 0.1, loaded: true });
    // What is refused leaves it as it was.
    await expect(keep(context, id, { value: 'much' }, second)).rejects.toThrow(/^Cannot read 'much'/);
    expect(placeReadingsOf(await readJob(context, id), 'tenor')).toHaveLength(1);
  });

  it('gives way to an answer, and an answer to it', async () => {
    const context = testContext();
    const id = await testJob(context);
    const standing = async () => {
      const job = await readJob(context, id);
      return { read: placeReadingsOf(job, 'tenor'), answered: placeAnswersOf(job, 'tenor') };
    };
    await keep(context, id, { value: '1.2', note: 'C4', span: '100', loaded: 'loaded' });
    // Corrected before: what was corrected must not come back.
    await keep(context, id, { value: '1.25' }, (await standing()).read[0]);
    await keep(context, id, { answer: 'unknown' }, (await standing()).read[0]);
    expect(await standing()).toMatchObject({
      read: [],
      answered: [{ answer: 'unknown', place: { key: 40 } }],
    });
    await keep(
      context,
      id,
      { answer: 'known', value: '1.3', span: '100', loaded: 'loaded' },
      (await standing()).answered[0],
    );
    expect(await standing()).toMatchObject({ read: [{ asRead: { value: 1.3 } }], answered: [] });
  });
});

describe('keepInPlaceOf()', () => {
  it('keeps a fact and takes back what it corrects; what is refused takes nothing back', async () => {
    const context = testContext();
    const id = await testJob(context);
    const sample = (label: string) => sampleOf({ what: 'felt', label, note: '' });
    const { samples } = await keepInPlaceOf(context, id, sample('bag 1'), undefined, {});
    await keepInPlaceOf(context, id, sample('bag 2'), samples[0]!.entry, {});
    const labels = async () => (await readJob(context, id)).samples.map(({ label }) => label);
    expect(await labels()).toEqual(['bag 2']);
    const standing = (await readJob(context, id)).samples[0]!.entry;
    const nothing = { ...sample('bag 3'), label: '' } as ReturnType<typeof sampleOf>;
    await expect(keepInPlaceOf(context, id, nothing, standing, {})).rejects.toThrow();
    expect(await labels()).toEqual(['bag 2']);
  });
});
