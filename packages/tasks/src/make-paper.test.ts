import { newUlid, stripCheck } from '@becket/journal';
import { type BlobStore, StoreUnavailable } from '@becket/store';
import { createMemoryStore } from '@becket/store/memory';
import { describe, expect, it } from 'vitest';
import { tinyJpeg } from '../../journal/src/testing/tiny-jpeg.ts';
import { readPdf } from '../../papers/src/testing/read-pdf.ts';
import { readJob, type TaskContext } from './context.ts';
import { appraiseDemoJob } from './demo/invented-appraisal.ts';
import { settleDemoJob } from './demo/invented-settling.ts';
import { openDemoJob } from './demo/open-demo-job.ts';
import { describeSections, describeUnisons } from './describe-piano.ts';
import { languageFor } from './language-for.ts';
import { makePaper, type PaperName, paperNames } from './make-paper.ts';
import { openJob } from './open-job.ts';
import { keepPriceList } from './order/price-list.ts';
import { recordPhoto } from './record-photo.ts';
import { recordReadings } from './record-reading.ts';
import { acceptGaps, sealRecord } from './strip-record.ts';
import { memoryContext } from './testing/memory-context.ts';

function contextAt(at: string): TaskContext {
  let count = 0;
  // 1009 is prime, so that ids of 16 draws each repeat only after 1009 of them.
  const nextShare = () => {
    count += 1;
    return (count % 1009) / 1009;
  };
  return {
    store: createMemoryStore(),
    now: () => new Date(at),
    newId: () => newUlid(new Date(at), nextShare),
    by: 'Ada',
    device: 'bench tablet',
  };
}

const at = '2026-04-02T08:00:00.000Z';

/** A job of four notes: two wound, two plain, all read but for one core. */
async function jobIn(context: TaskContext) {
  const { id } = await openJob(context, {
    title: 'Größe “Übung” 1/2',
    customer: 'Ines Okafor',
    piano: { form: 'vertical', firstKey: 20, lastKey: 23, referencePitch_hz: 440 },
  });
  await describeSections(context, id, [
    { section: 'bass', firstKey: 20, lastKey: 21, bridge: 'bass', frontTermination: 'agraffe' },
    { section: 'tenor', firstKey: 22, lastKey: 23, bridge: 'treble', frontTermination: 'agraffe' },
  ]);
  await describeUnisons(context, id, [
    { firstKey: 20, lastKey: 21, strings: 2, winding: 'wound', layers: 1 },
    { firstKey: 22, lastKey: 23, strings: 3, winding: 'plain', layers: 0 },
  ]);
  const reading = (
    key: number,
    quantity: Parameters<typeof recordReadings>[2][number]['quantity'],
    value: number,
  ) => ({ quantity, place: { key }, value, unit: 'mm' }) as const;
  await recordReadings(context, id, [
    reading(20, 'core-diameter', 1.1),
    ...[20, 21].flatMap((key) => [
      reading(key, 'over-all-diameter', 2.2),
      reading(key, 'speaking-length', 1100),
      reading(key, 'bare-front', 20),
      reading(key, 'bare-back', 15),
    ]),
    ...[22, 23].flatMap((key) => [reading(key, 'wire-diameter', 1.1), reading(key, 'speaking-length', 1000)]),
  ]);
  return id;
}

const textOf = ({ bytes }: { bytes: Uint8Array }) => new TextDecoder().decode(bytes);

/** The first columns of each table for machines. */
const firstColumns: Readonly<Record<PaperName, readonly string[]>> = {
  'appraisal-report': ['part', 'thing', 'section'],
  'appraisal-annex': ['key', 'note', 'string'],
  estimate: ['row', 'version', 'line_id'],
  'change-order': ['line', 'entry', 'noted_at'],
  'stringing-sheets': ['wire', 'section', 'joined'],
  'cut-list': ['wire', 'section', 'joined'],
  'settling-log': ['pass', 'on', 'by'],
  'hand-over-record': ['key', 'note', 'section'],
  'as-found-record': ['key', 'note', 'section'],
  'scale-comparison': ['key', 'note', 'before_wire_m'],
  'bass-string-order': ['key', 'note', 'string'],
  'bass-string-plan': ['string', 'winding_start_mm', 'winding_end_mm'],
  'purchase-list': ['supplier', 'article', 'item'],
};

describe('makePaper()', () => {
  it('makes every paper we have, as PDF in both sizes and as CSV', async () => {
    const context = contextAt(at);
    const job = await jobIn(context);
    for (const paper of paperNames) {
      for (const size of ['A4', 'Letter'] as const) {
        const pdf = await makePaper(context, job, { paper, size });
        expect(textOf(pdf).slice(0, 5)).toBe('%PDF-');
        expect(pdf).toMatchObject({
          mediaType: 'application/pdf',
          fileName: `grosse-ubung-1-2-${paper}.pdf`,
        });
      }
      const csv = await makePaper(context, job, { paper, format: 'csv' });
      expect(csv.mediaType).toBe('text/csv; charset=utf-8');
      expect(textOf(csv).split(',').slice(0, 3), paper).toEqual(firstColumns[paper]);
    }
  });

  it('hands the appraisal papers the figures that the job gives', async () => {
    const context = contextAt(at);
    const job = await jobIn(context);
    await recordReadings(context, job, [
      {
        quantity: 'pin-torque',
        place: { key: 22, string: 1 },
        value: 9.5,
        unit: 'N·m',
        condition: { strings: 'let down' },
      },
    ]);
    const csv = textOf(await makePaper(context, job, { paper: 'appraisal-annex', format: 'csv' }));
    const [head = '', row = ''] = csv.split('\r\n');
    expect(row.split(',')[head.split(',').indexOf('grip_n_m')]).toBe('9.500');
  });

  it('leaves a missing core empty in the order, with its state', async () => {
    const context = contextAt(at);
    const csv = await makePaper(context, await jobIn(context), { paper: 'bass-string-order', format: 'csv' });
    // Two strings of the note before, each on its line.
    const [head = '', , , second = ''] = textOf(csv).split('\r\n');
    const column = head.split(',').indexOf('core_diameter_mm');
    expect(second.split(',').slice(column, column + 3)).toEqual(['', '', 'not read']);
  });

  it('names the digest of a sealed record in the order', async () => {
    const context = contextAt(at);
    const job = await jobIn(context);
    const { openGaps } = stripCheck(await readJob(context, job));
    await acceptGaps(context, job, { gaps: openGaps.map(({ name }) => name), reason: 'practice' });
    await sealRecord(context, job);
    const csv = await makePaper(context, job, { paper: 'bass-string-order', format: 'csv' });
    expect(textOf(csv)).toMatch(/,[0-9a-f]{64}\r\n/);
  });

  it('makes the same table for machines in every language', async () => {
    const context = memoryContext();
    const { id } = await openDemoJob(context);
    await appraiseDemoJob(context, id);
    await settleDemoJob(context, id);
    // A supplier, so that the purchase list has a line, and a wire of a size.
    await keepPriceList(context, {
      supplier: 'Invented Wire',
      currency: 'EUR',
      bytes: new TextEncoder().encode(
        'article,kind,diameter_mm,sold_by,pack,pack_unit,price\nA-18,wire,1.041,coil,500,g,1234.50\n',
      ),
      fileName: 'prices.csv',
    });
    const german = { ...context, language: await languageFor('de-DE') };
    const empty: string[] = [];
    for (const paper of paperNames) {
      const [inEnglish, inGerman] = [
        await makePaper(context, id, { paper, format: 'csv' }),
        await makePaper(german, id, { paper, format: 'csv' }),
      ];
      expect({ ...inGerman, fileName: '' }, paper).toEqual({ ...inEnglish, fileName: '' });
      if (textOf(inEnglish).trim().split('\r\n').length === 1) empty.push(paper);
    }
    // Not made in this job; the papers' own test compares them filled. All others had rows to compare.
    expect(empty).toEqual(['estimate', 'scale-comparison', 'change-order']);
  });

  it('refuses a paper, size or format that it does not have, in one sentence', async () => {
    const context = contextAt(at);
    const job = await jobIn(context);
    await expect(makePaper(context, job, { paper: 'poster' as never })).rejects.toThrow(
      `Cannot make this paper: a paper of ${paperNames.join(', ')} is needed, 'poster' was found.`,
    );
    await expect(makePaper(context, job, { paper: 'as-found-record', size: 'A3' as never })).rejects.toThrow(
      RangeError,
    );
    await expect(
      makePaper(context, job, { paper: 'as-found-record', format: 'doc' as never }),
    ).rejects.toThrow(RangeError);
    await expect(
      makePaper(context, '01ARZ3NDEKTSV4RRFFQ69G5FAV', { paper: 'as-found-record' }),
    ).rejects.toThrow(/Cannot find job/);
  });

  it('prints the photos that are here, and says of one that is missing or damaged that it is', async () => {
    const context = contextAt(at);
    const job = await jobIn(context);
    const { digest } = await recordPhoto(context, job, {
      jpeg: tinyJpeg,
      width: 2,
      height: 2,
      place: { key: 22 },
      shows: 'the old loop',
    });
    const absent = 'Thisphotowasnotwherethepaperwasmade';
    const wordsOf = async (blobs: Partial<BlobStore>) => {
      const store = { ...context.store, blobs: { ...context.store.blobs, ...blobs } };
      const { bytes } = await makePaper({ ...context, store }, job, { paper: 'as-found-record' });
      const { pages } = await readPdf(bytes);
      return pages.map(({ words }) => words).join('');
    };
    const whole = await wordsOf({});
    expect(whole).toContain(`digest${digest.slice(0, 12)}`);
    expect(whole).not.toContain(absent);
    expect(await wordsOf({ get: async () => undefined })).toContain(absent);
    const damaged = new StoreUnavailable('damaged', 'here', 'Cannot read the photo: it is damaged.');
    expect(await wordsOf({ get: () => Promise.reject(damaged) })).toContain(absent);
    // A store that cannot be read at all is no matter of one photo.
    const closed = new StoreUnavailable('cannot be opened', 'here', 'Cannot read here.');
    await expect(wordsOf({ get: () => Promise.reject(closed) })).rejects.toThrow('Cannot read here.');
  });

  it.each(paperNames)('prints where the job is found again: %s', async (paper) => {
    const context = contextAt(at);
    const job = await jobIn(context);
    const address = 'http://bench.shop.example/#/job/1/record';
    const { pages } = await readPdf((await makePaper(context, job, { paper, address })).bytes);
    const printed = pages.flatMap(({ texts }) => texts).filter(({ text }) => text.includes(address));
    // Not one string of this job can be drawn at true scale: its plan has room for the code as well.
    expect(printed).toHaveLength(1);
  });
});
