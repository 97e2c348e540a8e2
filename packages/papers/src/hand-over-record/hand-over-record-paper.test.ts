import { newtonMetres } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { renderCsv } from '../render/csv.ts';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/index.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { handOverTestFigures, settledJob, settledJournal } from '../testing/settled-job.ts';
import { treeTexts } from '../testing/tree-texts.ts';
import { handOverRecordPaper } from './hand-over-record-paper.ts';

const paper = handOverRecordPaper(settledJob(), testOptions, handOverTestFigures());
const openJournal = settledJournal({ isHandedOver: false });
const draft = handOverRecordPaper(
  settledJob(openJournal),
  { ...testOptions, firstUnit: 'in' },
  handOverTestFigures(openJournal),
);

describe('the hand-over record', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(paper, null, 1)).toMatchFileSnapshot('../saved-trees/hand-over-record.json');
    await expect(JSON.stringify(draft, null, 1)).toMatchFileSnapshot(
      '../saved-trees/hand-over-record-draft.json',
    );
    const german = handOverRecordPaper(settledJob(), germanOptions, handOverTestFigures());
    await expect(JSON.stringify(german, null, 1)).toMatchFileSnapshot(
      '../saved-trees/hand-over-record-german.json',
    );
  });

  it('names whoever took it and answers for it; until then it is a draft', () => {
    const [done, open] = [paper, draft].map((tree) => treeTexts(tree).join('\n'));
    expect(done).toContain(withoutSpaces('on 10 March 2026 to Ines Okafor'));
    expect(done).not.toContain('Adraft');
    expect(open).toContain('Adraft');
    expect(open).toContain(withoutSpaces('Nothing said yet.'));
  });

  it('says of each string where its size comes from, and of a note that nobody knows that it is unknown', () => {
    const rows = renderCsv(paper)
      .trimEnd()
      .split('\r\n')
      .map((row) => row.split(','));
    const from = new Map(rows.slice(1).map((row) => [row[1], row.at(-1)]));
    // The wire of D3 was measured anew, that of C#3 was not; the core of F#2 was never read.
    expect(from.get('B2')).toBe('measured');
    expect(from.get('C#3')).toBe('as found');
    expect(from.get('F#2')).toBe('unknown');
    // The new wire of D#3 was measured, of its length nothing is known.
    const last = rows.find((row) => row[1] === 'D#3')!;
    expect(last.slice(-4)).toEqual(['0.001', '', '', 'measured']);
    const wire = rows.find((row) => row[1] === 'B2')![rows[0]!.indexOf('wire_m')];
    expect(wire).toBe('0.001075');
  });

  it('says what was not read, and compares nothing with a scale that was never chosen', () => {
    const texts = treeTexts(paper).join('\n');
    for (const words of [
      'No scale was chosen: there is nothing to compare with.',
      'No photo of the new work was kept.',
      'To be tuned on8 April 2026; 1 July 2026',
    ])
      expect(texts).toContain(withoutSpaces(words));
  });

  it('prints a torque by section with its interval, and says where there are too few pins for one', () => {
    const section = (name: string, interval?: readonly [number, number]) => ({
      section: name,
      pins: 40,
      read: 3,
      withGrip: 3,
      low: 0,
      mean: {
        mean: newtonMetres(15.25),
        interval: interval && {
          low: newtonMetres(interval[0]),
          high: newtonMetres(interval[1]),
          level: 0.95,
        },
        lowest: newtonMetres(14),
        read: 3,
        pins: 40,
      },
      lowest: undefined,
      byKind: [],
      zone: undefined,
    });
    const tree = handOverRecordPaper(settledJob(), testOptions, {
      ...handOverTestFigures(),
      torque: [section('bass', [14.1, 16.4]), section('tenor')],
    });
    const texts = treeTexts(tree);
    // 15.25 N·m are 134.97 in·lbf, at 0.1129848 N·m to the in·lbf.
    expect(texts).toContain(withoutSpaces('bass 40 3 15.3 135 14.1 to 16.4'));
    expect(texts).toContain(withoutSpaces('tenor 40 3 15.3 135 too few'));
  });

  it('can be read back from the PDF in both sizes', async () => {
    for (const size of ['A4', 'Letter'] as const) {
      const pdf = await renderPdf(paper, {
        size,
        madeAt: new Date(testOptions.at),
        fonts: await fontsOnNode(),
      });
      const text = (await readPdf(pdf)).pages.map(({ words }) => words).join('');
      for (const words of treeTexts(paper)) expect(text).toContain(words);
    }
  });
});
