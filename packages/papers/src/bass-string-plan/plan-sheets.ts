import { inMillimetres, type Language } from '@becket/core';
import type { BassQuantity, BassString } from '@becket/journal';
import type { Drawing, DrawnLine, DrawnText } from '../page-tree.ts';

/*
 * The strings laid out side by side at true length, cut into sheets that overlap. Everything is measured along x from the
 * inside of the hitch loop; y only sets the strings apart. All lengths are millimetres.
 */

/** Wide enough for A4 and Letter lying on their side. */
export const SHEET_WIDTH_MM = 250;
/** What the next sheet shows again. */
export const OVERLAP_MM = 10;
const STEP_MM = SHEET_WIDTH_MM - OVERLAP_MM;
const STRING_SPACING_MM = 4.6;
const STRINGS_ON_A_SHEET = 24;
const TOP_MM = 24;
const INCH_MM = 25.4;
const WEIGHTS = { core: 0.25, winding: 1.2, mark: 0.2, ruler: 0.2 };
const TEXT_MM = 2.1;
/** Room beside the sheet, so that a line on its edge is drawn whole. */
const EDGE_MM = 0.5;

/** Where one string has its marks, from the inside of its hitch loop. */
export interface PlannedString {
  readonly name: string;
  readonly windingStart_mm: number;
  readonly windingEnd_mm: number;
  /** Bridge pin; undefined where the back length was not read. */
  readonly bridge_mm: number | undefined;
  readonly termination_mm: number;
}

/** The marks of a string; undefined while one of its lengths is missing. */
export function plannedString(
  { note, side, stated }: BassString,
  { say }: Language,
): PlannedString | undefined {
  const of = (quantity: BassQuantity): number | undefined => {
    const one = stated[quantity];
    return one.is === 'length' ? inMillimetres(one.value) : undefined;
  };
  const start = of('loop-to-winding');
  const winding = of('winding-length');
  const termination = of('loop-to-termination');
  if (start === undefined || winding === undefined || termination === undefined) return undefined;
  return {
    name: side === 'single' ? note : `${note} ${say(side)}`,
    windingStart_mm: start,
    windingEnd_mm: start + winding,
    bridge_mm: of('back-length'),
    termination_mm: termination,
  };
}

export interface PlanSheet {
  /** 'Strings 1, sheet 2 of 5' */
  readonly title: string;
  readonly drawing: Drawing;
}

/** The sheets, group after group of strings, each from the loop to the front. */
export function planSheets(strings: readonly PlannedString[], language: Language): PlanSheet[] {
  const sheets: PlanSheet[] = [];
  const groups = Math.ceil(strings.length / STRINGS_ON_A_SHEET);
  for (let group = 0; group < groups; group += 1) {
    const own = strings.slice(group * STRINGS_ON_A_SHEET, (group + 1) * STRINGS_ON_A_SHEET);
    const longest = Math.max(...own.map(({ termination_mm }) => termination_mm));
    // The last sheet reaches past the longest string, so that its front mark is not on the edge of the paper.
    const count = Math.max(1, Math.ceil((longest + OVERLAP_MM / 2) / STEP_MM));
    for (let sheet = 0; sheet < count; sheet += 1) {
      sheets.push({
        title: language.say('Strings {group} of {groups}, sheet {sheet} of {sheets}', {
          group: String(group + 1),
          groups: String(groups),
          sheet: String(sheet + 1),
          sheets: String(count),
        }),
        drawing: sheetDrawing(own, { group, sheet, count }, language),
      });
    }
  }
  return sheets;
}

function sheetDrawing(
  strings: readonly PlannedString[],
  { group, sheet, count }: { readonly group: number; readonly sheet: number; readonly count: number },
  { say }: Language,
): Drawing {
  const left = sheet * STEP_MM;
  const height = TOP_MM + strings.length * STRING_SPACING_MM + 6;
  const lines: DrawnLine[] = [...rulerLines()];
  const texts: DrawnText[] = [
    { at_mm: [MM_RULER.x, MM_RULER.y + BELOW_RULER_MM], text: say('check: 100 mm'), size_mm: TEXT_MM },
    { at_mm: [INCH_RULER.x, INCH_RULER.y + BELOW_RULER_MM], text: say('check: 4 in'), size_mm: TEXT_MM },
  ];
  /** The part of a line along x that lies on this sheet. */
  const along = (from: number, to: number, y: number, weight_mm: number) => {
    const [start, end] = [Math.max(from - left, 0), Math.min(to - left, SHEET_WIDTH_MM)];
    if (end > start) lines.push({ from_mm: [start, y], to_mm: [end, y], weight_mm });
  };
  const mark = (at: number | undefined, y: number, half: number) => {
    if (at === undefined || at < left || at > left + SHEET_WIDTH_MM) return;
    lines.push({ from_mm: [at - left, y - half], to_mm: [at - left, y + half], weight_mm: WEIGHTS.mark });
  };
  strings.forEach((string, index) => {
    const y = TOP_MM + (index + 0.5) * STRING_SPACING_MM;
    along(0, string.termination_mm, y, WEIGHTS.core);
    along(string.windingStart_mm, string.windingEnd_mm, y, WEIGHTS.winding);
    for (const at of [0, string.termination_mm]) mark(at, y, 1.8);
    for (const at of [string.windingStart_mm, string.windingEnd_mm]) mark(at, y, 1.4);
    mark(string.bridge_mm, y, 1);
    if (string.termination_mm > left + OVERLAP_MM)
      texts.push({ at_mm: [OVERLAP_MM + 4, y - 0.9], text: string.name, size_mm: TEXT_MM });
  });
  for (const joint of [...(sheet > 0 ? [sheet - 1] : []), ...(sheet < count - 1 ? [sheet] : [])]) {
    const name = `${group + 1}${String.fromCharCode(65 + (joint % 26))}`;
    for (const [row, at] of [(joint + 1) * STEP_MM, (joint + 1) * STEP_MM + OVERLAP_MM].entries()) {
      const x = at - left;
      lines.push({
        from_mm: [x, TOP_MM - 4],
        to_mm: [x, height - 2],
        weight_mm: WEIGHTS.mark,
        tone: 'quiet',
        dashed: true,
      });
      texts.push({
        at_mm: [x, TOP_MM - 5 - 3 * row],
        text: `${name} ${at.toFixed(0)}`,
        size_mm: TEXT_MM,
        anchor: x < 1 ? undefined : x > SHEET_WIDTH_MM - 1 ? 'end' : 'middle',
        tone: 'quiet',
      } as DrawnText);
    }
  }
  return {
    is: 'drawing',
    words: say('Strings at true length from {from} to {to} mm from the hitch loop.', {
      from: String(left),
      to: String(left + SHEET_WIDTH_MM),
    }),
    width_mm: SHEET_WIDTH_MM + 2 * EDGE_MM,
    height_mm: height,
    lines: lines.map((line) => ({ ...line, from_mm: inset(line.from_mm), to_mm: inset(line.to_mm) })),
    texts: texts.map((text) => ({ ...text, at_mm: inset(text.at_mm) })),
  };
}

const inset = ([x, y]: readonly [number, number]): readonly [number, number] => [x + EDGE_MM, y];

const MM_RULER = { x: 20, y: 8 };
const INCH_RULER = { x: 132, y: 8 };
const BELOW_RULER_MM = 3.2;

/** 100 mm in tens and 4 in in halves: what a sheet is checked by before anything is laid on it. */
function rulerLines(): DrawnLine[] {
  const ruler = ({ x, y }: typeof MM_RULER, length: number, ticks: number, long: number): DrawnLine[] => [
    { from_mm: [x, y], to_mm: [x + length, y], weight_mm: WEIGHTS.ruler },
    ...Array.from({ length: ticks + 1 }, (_, index): DrawnLine => {
      const at = x + (index * length) / ticks;
      return {
        from_mm: [at, y],
        to_mm: [at, y - (index % long === 0 ? 3.4 : 2)],
        weight_mm: WEIGHTS.ruler,
      };
    }),
  ];
  return [...ruler(MM_RULER, 100, 10, 5), ...ruler(INCH_RULER, 4 * INCH_MM, 8, 2)];
}
