import { english, inches, inMetres, type Language, millimetres } from '@becket/core';
import type { BassOrder } from '@becket/journal';
import { type AllowanceName, allowances, requireAllowance, type Supplies } from '@becket/tasks';
import { type LengthUnit, lengthText } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

/** Below this a length is told to a micrometre, as a diameter is. */
const fine_m = 0.02;

/** A figure as it stands on the screen: '10 %', '3', '6.0 mm'. */
export function allowanceText(
  name: AllowanceName,
  value: number,
  unit: LengthUnit,
  language: Language = english,
): string {
  switch (allowances[name].is) {
    case 'share':
      return `${language.plain(Number((value * 100).toPrecision(6)))} %`;
    case 'count':
      return String(value);
    case 'length':
      return lengthText(value, unit, allowances[name].starting < fine_m ? 'diameter' : 'length', language);
  }
}

/** The unit that is typed: '%', 'mm', or nothing for a count. */
export function allowanceUnit(name: AllowanceName, unit: LengthUnit): string {
  return { share: '%', count: '', length: unit }[allowances[name].is];
}

/** The figure that was typed, as it is kept. Throws: RangeError with one sentence when it is none or out of its range. */
export function allowanceOf(
  { name, value: typed, source }: { name: AllowanceName; value: string; source: string },
  unit: LengthUnit,
  language: Language = english,
) {
  const { is } = allowances[name];
  const read = readTypedNumber(is === 'share' ? typed.replace(/\s*%\s*$/, '') : typed, language);
  const readUnit = read.is === 'number' ? (read.unit ?? (is === 'length' ? unit : undefined)) : undefined;
  const isLength = readUnit === 'mm' || readUnit === 'in';
  if (read.is !== 'number' || (is === 'length' ? !isLength : readUnit !== undefined))
    throw new RangeError(
      language.say(
        "Cannot set this figure: {kind, select, length {a length in mm or in} share {a number of percent} other {a whole number}} is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.",
        { kind: is, found: typed.trim() === '' ? 'none' : typed.trim() },
      ),
    );
  const value =
    is === 'share'
      ? Number((read.value / 100).toPrecision(12))
      : is === 'count'
        ? read.value
        : inMetres(readUnit === 'in' ? inches(read.value) : millimetres(read.value));
  const wish = { name, value, source };
  requireAllowance(wish, language);
  return wish;
}

/** Lines of a job whose quantity another figure changes, by their id. */
export function changedLines(now: Supplies, then: Supplies) {
  return then.lines.flatMap(({ id, what, unit, total }) => {
    const before = now.lines.find((line) => line.id === id)?.total;
    return before === total ? [] : [{ id, what, unit, before, after: total }];
  });
}

/** What another figure makes of the bass strings: the longest core beyond the front, and how many checks do not pass. */
export function bassChange(now: BassOrder, then: BassOrder) {
  const lengths = now.strings.flatMap((string, index) => {
    const [before, after] = [string, then.strings[index]!].map(({ stated }) => stated['core-beyond-front']);
    return before!.is === 'length' && after!.is === 'length' && before!.value !== after!.value
      ? [{ note: string.note, before: before!.value, after: after!.value }]
      : [];
  });
  const [longest] = lengths.toSorted((a, b) => b.after - a.after);
  return {
    core: longest === undefined ? undefined : { ...longest, strings: lengths.length },
    checks:
      now.checks.length === then.checks.length
        ? undefined
        : { before: now.checks.length, after: then.checks.length },
  };
}
