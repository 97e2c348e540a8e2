import { english, type Language, noteName } from '@becket/core';
import type { Pass, PassPlan, PassValueKind, Section } from '@becket/journal';
import { readTypedNumber } from '../../parts/typed-number.ts';

/** One line of the sheet a pass is typed into: a section as a whole, or one of its notes. */
export interface PassRow {
  readonly id: string;
  readonly section: string;
  /** Undefined for the mean of the section. */
  readonly key: number | undefined;
}

export type ReadAs = 'section' | 'notes';

/** The steps of a pass, in the order of the work. */
export const passSteps: readonly PassValueKind[] = ['before', 'aimed', 'after'];

/**
 * The lines of one step, in the order in which the sections are pulled up. Notes are the lowest, the middle and the highest of
 * each section and whichever were read; how far to pull is said of a section.
 */
export function passRows(
  pass: Pass,
  sections: readonly Section[],
  step: PassValueKind,
  readAs: ReadAs,
): PassRow[] {
  return pass.sections.flatMap(({ section, before, after }): PassRow[] => {
    const whole: PassRow = { id: section, section, key: undefined };
    const described = sections.find((one) => one.section === section);
    if (step === 'aimed' || readAs === 'section' || described === undefined) return [whole];
    const { firstKey, lastKey } = described;
    const read = [...before, ...after].flatMap(({ key }) => key ?? []);
    const keys = new Set([firstKey, Math.round((firstKey + lastKey) / 2), lastKey, ...read]);
    return [...keys]
      .sort((a, b) => a - b)
      .map((key) => ({ id: `${section}/${noteName(key)}`, section, key }));
  });
}

/** What is kept of a line in one step; undefined where nothing is. */
export function keptOf(
  pass: Pass,
  step: PassValueKind,
  row: PassRow,
): { entry: string; offset_cents: number } | undefined {
  return pass.sections
    .find(({ section }) => section === row.section)
    ?.[step].find(({ key }) => key === row.key);
}

/** Where Enter goes from a line: the next line, or the first line of the next step; undefined at the end of the pass. */
export function placeAfter(
  rows: readonly PassRow[],
  row: PassRow,
  step: PassValueKind,
): { readonly step: PassValueKind; readonly row: PassRow | undefined } | undefined {
  const next = rows[rows.findIndex(({ id }) => id === row.id) + 1];
  if (next !== undefined) return { step, row: next };
  const further = passSteps[passSteps.indexOf(step) + 1];
  return further === undefined ? undefined : { step: further, row: undefined };
}

/**
 * Cents as they are typed: '-32', '−32', '4,5'. Undefined for an empty field.
 * Throws: RangeError with the sentence to show when it is no number.
 */
export function centsOf(text: string, language: Language = english): number | undefined {
  const typed = readTypedNumber(text.replaceAll('−', '-'), language);
  if (typed.is === 'empty') return undefined;
  if (typed.is === 'number' && typed.unit === undefined) return typed.value;
  throw new RangeError(
    language.say('Cannot read ‘{text}’ as cents: a number such as -32 or 4.5 is needed. Type it again.', {
      text: text.trim(),
    }),
  );
}

/** A number of a field that may stay empty. Throws: RangeError with the sentence to show. */
export function numberOf(text: string, unit: string, language: Language = english): number | undefined {
  const typed = readTypedNumber(text.replaceAll('−', '-'), language);
  if (typed.is === 'empty') return undefined;
  if (typed.is === 'number' && typed.unit === undefined) return typed.value;
  throw new RangeError(
    language.say('Cannot read ‘{text}’: a number in {unit} is needed. Type it again.', {
      text: text.trim(),
      unit,
    }),
  );
}

/** A share in percent as it stands in a sentence or a field: '65', '62.5'. */
export const shareText = (share: number, { plain }: Language = english): string =>
  plain(Number((share * 100).toPrecision(4)));

/** The share that was typed in percent. Throws: RangeError with one sentence when it is no number. */
export function shareOf(text: string, language: Language = english): number {
  const percent = numberOf(text.replace(/\s*%\s*$/, ''), '%', language);
  if (percent === undefined)
    throw new RangeError(
      language.say('Cannot set this limit: a number of percent is needed, nothing was found. Type it.'),
    );
  return Number((percent / 100).toPrecision(12));
}

/** An offset in cents with its sign: '−7.3', '+4.0', '0.0'. */
export function offsetText(offset_cents: number, { fixed }: Language = english): string {
  const figures = fixed(Math.abs(Number(offset_cents.toPrecision(9))), 1);
  if (!/[1-9]/.test(figures)) return figures;
  return `${offset_cents < 0 ? '−' : '+'}${figures}`;
}

/** The overpulls that are told and not taken yet, ready to be kept; to a tenth, rounded down so that no limit is passed. */
export function toldOverpulls(
  pass: Pass,
  { sections }: PassPlan,
): { readonly section: string; readonly offset_cents: number }[] {
  return sections.flatMap(({ section, next }) => {
    const own = pass.sections.find((one) => one.section === section);
    if (next === undefined || own === undefined || own.aimed.length > 0) return [];
    return [{ section, offset_cents: Math.floor(next.overpull * 10) / 10 }];
  });
}

/** The order of sections with one of them moved a place earlier. */
export function movedEarlier(order: readonly string[], section: string): string[] {
  const at = order.indexOf(section);
  if (at <= 0) return [...order];
  const moved = [...order];
  moved[at - 1] = section;
  moved[at] = order[at - 1]!;
  return moved;
}
