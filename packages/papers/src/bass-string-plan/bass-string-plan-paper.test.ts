import { english } from '@becket/core';
import { type BassQuantity, bassOrder } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/pdf.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { type PlacedLine, readPdfLines } from '../testing/read-pdf-lines.ts';
import { smallJob } from '../testing/small-job.ts';
import { bassStringPlanPaper } from './bass-string-plan-paper.ts';
import { OVERLAP_MM, planSheets, SHEET_WIDTH_MM } from './plan-sheets.ts';

/** 1 pt = 1/72 in. Source: ISO 32000-1, 8.3.2.3 (default user space). */
const inMm = (points: number) => (points / 72) * 25.4;
/** What a rule can show: a tenth of a millimetre. */
const TOLERANCE_MM = 0.1;

const job = smallJob({ sealed: true });
const tree = bassStringPlanPaper(job, testOptions);
const [string] = bassOrder(job).strings;
const length = (quantity: BassQuantity): number => {
  const stated = string!.stated[quantity];
  return stated.is === 'length' ? stated.value * 1000 : Number.NaN;
};

const lengthOf = ({ from, to }: PlacedLine) => inMm(Math.hypot(to[0] - from[0], to[1] - from[1]));
const isLevel = ({ from, to }: PlacedLine) => Math.abs(from[1] - to[1]) < 0.01;
const isUpright = ({ from, to }: PlacedLine) => Math.abs(from[0] - to[0]) < 0.01;

describe.each(['A4', 'Letter'] as const)(
  'the bass string plan on %s, read back from its PDF',
  async (size) => {
    const bytes = await renderPdf(tree, { size, fonts: await fontsOnNode(), madeAt: new Date(0) });
    const [, ...sheets] = await readPdfLines(bytes);
    const { pages } = await readPdf(bytes);

    it('has one page of words and one a sheet, none of them shrunk or turned', () => {
      // E2 is 92 + 1073 + 18.5 = 1183.5 mm long: five sheets of 240 mm and what overlaps.
      expect(sheets).toHaveLength(5);
      const [width, height] = size === 'A4' ? [297, 210] : [279.4, 215.9];
      for (const page of pages) {
        expect(inMm(page.width)).toBeCloseTo(width, 1);
        expect(inMm(page.height)).toBeCloseTo(height, 1);
      }
    });

    it('carries rulers of 100 mm and 4 in on every sheet, true to a tenth of a millimetre', () => {
      for (const sheet of sheets) {
        const lengths = sheet.filter(isLevel).map(lengthOf);
        expect(lengths.some((one) => Math.abs(one - 100) <= TOLERANCE_MM)).toBe(true);
        expect(lengths.some((one) => Math.abs(one - 101.6) <= TOLERANCE_MM)).toBe(true);
        const hundred = sheet.find(
          (line) => isLevel(line) && Math.abs(lengthOf(line) - 100) <= TOLERANCE_MM,
        )!;
        const ticks = sheet
          .filter((line) => isUpright(line) && Math.abs(line.from[1] - hundred.from[1]) < 0.01)
          .map(({ from }) => inMm(from[0] - hundred.from[0]))
          .filter((at) => at > -0.5 && at < 100.5);
        expect(ticks).toHaveLength(11);
        ticks
          .sort((a, b) => a - b)
          .forEach((at, index) => {
            expect(Math.abs(at - 10 * index)).toBeLessThanOrEqual(TOLERANCE_MM);
          });
      }
    });

    /** Left edge of the drawing on the page: it starts at the margin, where the first ruler is 20 mm in. */
    const leftOf = (sheet: readonly PlacedLine[]) =>
      inMm(sheet.find((line) => isLevel(line) && Math.abs(lengthOf(line) - 100) <= TOLERANCE_MM)!.from[0]) -
      20;

    it('draws core and winding of E2 as long as they are, over the joints of the sheets', () => {
      const pieces = (isWinding: boolean) =>
        sheets.flatMap((sheet, index) =>
          sheet
            .filter((line) => isLevel(line) && inMm(line.weight) > 1 === isWinding)
            .filter((line) => isWinding || Math.abs(inMm(line.weight) - 0.25) < 0.01)
            .map(({ from, to }) => [
              inMm(from[0]) - leftOf(sheet) + index * (SHEET_WIDTH_MM - OVERLAP_MM),
              inMm(to[0]) - leftOf(sheet) + index * (SHEET_WIDTH_MM - OVERLAP_MM),
            ]),
        );
      const reach = (isWinding: boolean) => {
        const own = pieces(isWinding);
        return [Math.min(...own.map(([from]) => from!)), Math.max(...own.map(([, to]) => to!))] as const;
      };
      const [coreFrom, coreTo] = reach(false);
      expect(Math.abs(coreFrom)).toBeLessThanOrEqual(TOLERANCE_MM);
      expect(Math.abs(coreTo - length('loop-to-termination'))).toBeLessThanOrEqual(TOLERANCE_MM);
      const [windingFrom, windingTo] = reach(true);
      expect(Math.abs(windingFrom - length('loop-to-winding'))).toBeLessThanOrEqual(TOLERANCE_MM);
      expect(Math.abs(windingTo - length('loop-to-winding') - length('winding-length'))).toBeLessThanOrEqual(
        TOLERANCE_MM,
      );
    });

    it('keeps every line inside the paper', () => {
      sheets.forEach((sheet, index) => {
        const { width, height } = pages[index + 1]!;
        for (const { from, to } of sheet)
          for (const [x, y] of [from, to]) {
            expect(x).toBeGreaterThan(0);
            expect(x).toBeLessThan(width);
            expect(y).toBeGreaterThan(0);
            expect(y).toBeLessThan(height);
          }
      });
    });

    it('names both dashed lines of a joint alike on the two sheets that it joins', () => {
      for (let joint = 0; joint + 1 < sheets.length; joint += 1) {
        const name = `1${String.fromCharCode(65 + joint)}`;
        for (const at of [(joint + 1) * 240, (joint + 1) * 240 + 10])
          for (const page of [pages[joint + 1]!, pages[joint + 2]!])
            expect(page.words).toContain(`${name}${at}`);
      }
    });
  },
);

describe('bassStringPlanPaper()', () => {
  it('says that there is none to draw yet, and counts no sheets', () => {
    const needed = [
      'loop-to-winding',
      'winding-length',
      'front-length',
      'back-length',
      'bare-front',
      'bare-back',
    ];
    const unread = { ...job, readings: job.readings.filter(({ quantity }) => !needed.includes(quantity)) };
    const [, lead] = bassStringPlanPaper(unread, testOptions).blocks;
    expect(lead).toMatchObject({ text: expect.stringMatching(/^No wound string can be drawn yet, from /) });
  });

  it('names the strings that it cannot draw', () => {
    expect(JSON.stringify(tree)).toContain('F2, F#2, G2, G#2, A2, A#2: loop to winding');
  });

  it('puts 50 strings on three groups of sheets that all reach past their longest', () => {
    const strings = Array.from({ length: 50 }, (_, index) => ({
      name: `string ${index}`,
      windingStart_mm: 90,
      windingEnd_mm: 1400 - 10 * index,
      bridge_mm: 80,
      termination_mm: 1430 - 10 * index,
    }));
    const sheets = planSheets(strings, english);
    expect(new Set(sheets.map(({ title }) => title.slice(0, 14))).size).toBe(3);
    for (const { drawing } of sheets) {
      // The narrower paper, Letter on its side, leaves 279.4 mm less two margins of 40 pt: 251.2 mm.
      expect(drawing.width_mm).toBeLessThanOrEqual(251.2);
      // Both papers leave 169 mm and more between head and foot, less the line of the heading.
      expect(drawing.height_mm).toBeLessThan(150);
    }
  });
});
