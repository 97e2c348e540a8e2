import { inKilonewtons, type Newtons, newtons, noteName } from '../units/index.ts';
import { type Language, sayKnown } from '../words/index.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import type { LoadShare } from './scale-analysis.ts';
import type { ShopLimit } from './shop-policy.ts';

/* What the sentences of the findings are made of. */

/** 'at C4' or 'on 5 notes, C4 to E4'. */
export function at(run: readonly NoteAnalysis[], { say }: Language): string {
  const [first, last] = [noteName(run[0]!.key), noteName(run[run.length - 1]!.key)];
  return run.length === 1
    ? say('at {note}', { note: first })
    : say('on {count} notes, {first} to {last}', { count: run.length, first, last });
}

/** A limit is a round figure that somebody chose; it is told as it was chosen. */
export function limitText(limit: ShopLimit, language: Language): string {
  const allowed =
    limit.unit === '1'
      ? `${language.plain(Number((limit.value * 100).toFixed(2)))} %`
      : kilonewtonText(newtons(limit.value), language);
  return language.say('limit {allowed}, {source}', { allowed, source: sayKnown(limit.source, language) });
}

export function percent(share: number, { fixed }: Language): string {
  return `${fixed(share * 100, 1)} %`;
}

/** '12.0 % ± 0.5 %' where the uncertainty is known. */
export function percentWithin(share: number, within: number | undefined, language: Language): string {
  return within === undefined
    ? percent(share, language)
    : `${percent(share, language)} ± ${percent(within, language)}`;
}

export function newtonText(force: number): string {
  return `${force.toFixed(0)} N`;
}

export function kilonewtonText(force: Newtons, { fixed }: Language): string {
  return `${fixed(inKilonewtons(force), 1)} kN`;
}

/** '1.2e-4' */
export function powerText(value: number, { fixed }: Language): string {
  const [figures, power] = value.toExponential(1).split('e');
  return `${fixed(Number(figures), 1)}e${power}`;
}

export function loadText(share: LoadShare, language: Language): string {
  return language.say('{load} ({name}, {strings} strings)', {
    load: kilonewtonText(share.load, language),
    name: share.name,
    strings: share.strings,
  });
}

/** 'Over the break from bass to tenor' or 'Within bass, from 1 to 2 strings a note'. */
export function breakText(
  { note: lower }: NoteAnalysis,
  { note: upper }: NoteAnalysis,
  { say }: Language,
): string {
  if (lower.section !== upper.section)
    return say('Over the break from {lower} to {upper}', { lower: lower.section, upper: upper.section });
  const { section } = lower;
  if (lower.string.kind !== upper.string.kind)
    return say(
      'Within {section}, from {lower, select, plain {plain to wound} other {wound to plain}} strings',
      {
        section,
        lower: lower.string.kind,
      },
    );
  return lower.strings === upper.strings
    ? say("Within {section}, from the bridge '{lower}' to '{upper}'", {
        section,
        lower: lower.bridge,
        upper: upper.bridge,
      })
    : say('Within {section}, from {lower} to {upper} strings a note', {
        section,
        lower: lower.strings,
        upper: upper.strings,
      });
}
