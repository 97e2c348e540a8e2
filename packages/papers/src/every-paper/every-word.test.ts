import { english, type Language, type Sayable } from '@becket/core';
import { german as core } from '@becket/core/german';
import { german as journal } from '@becket/journal/german';
import { describe, expect, it } from 'vitest';
import { german as papersGerman } from '../german.ts';
import type { PageTree } from '../page-tree.ts';
import { allPapers } from '../testing/all-papers.ts';
import { testOptions } from '../testing/paper-options.ts';

/** English in which whatever was said, and every day, row and amount, stands in brackets. */
const bracketing: Language = {
  ...english,
  // What is put into a message stands outside its brackets: it was said for itself, or it is a leak.
  say: <const Text extends string>(text: Sayable<Text>, values: Parameters<Language['say']>[1] = {}) =>
    `⟦${english.say(
      text,
      Object.fromEntries(
        Object.entries(values as object).map(([name, value]) => [
          name,
          typeof value === 'string' && !text.includes(`{${name}, select`) ? `⟧${value}⟦` : value,
        ]),
      ) as typeof values,
    )}⟧`,
  day: (at) => `⟦${english.day(at)}⟧`,
  moment: (at) => `⟦${english.moment(at)}⟧`,
  list: (items, last) => `⟦${english.list(items, last)}⟧`,
  money: (amount, currency, as) => `⟦${english.money(amount, currency, as)}⟧`,
};

/** What a tree holds beside the texts that are read. */
const notRead = new Set([
  'paper',
  'language',
  'orientation',
  'textSize',
  'machineTable',
  'is',
  'tone',
  'align',
  'marks',
  'mark',
  'scale',
  'page',
  'digest',
  'anchor',
  'address',
]);

function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, own]) =>
    // `marks` of a list says how its items begin; those of a photo are drawn with their words.
    notRead.has(name) && !(name === 'marks' && Array.isArray(own)) ? [] : textsOf(own),
  );
}

/** Fields in which a person writes, or a task a sentence of its own; every other text of a job is a word of ours. */
const written = new Set(
  'climate done stillOpen to signedBy where title customer maker model serialNumber section bridge frontTermination what whatToDo note reason because conditions by name shows point text label part colour hitchPin otherHitchPin movedFrom ifFound unit instrument file found used seal digest currency sentence what wouldSettle lowBelowFrom source looksLike oftenMeans howSure cautions asFound adviceRestsOn lawSentence leftOutBecause figure condition deferTo scale allowances needs undescribed size remarks supplier article needed covered pack price total remark onHand toBuy notCounted orders unknown column stated row version'.split(
    ' ',
  ),
);

/** Words of ours that stand in fields of those names. */
const ours = new Set(['quantity', 'time', 'nothing', 'broke', 'tuning', 'cents']);

/** Fields that hold words of ours until somebody types their own: typed are only those that are no message. */
const oursUntilTyped = new Set(
  'source lowBelowFrom adviceRestsOn strengthTable name contradiction remark'.split(' '),
);
const catalogue = { ...core, ...journal, ...papersGerman };
const isOurs = (text: string): boolean => Object.hasOwn(catalogue, text);

function writtenIn(value: unknown, isWritten = false): string[] {
  if (typeof value === 'string') return isWritten ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one) => writtenIn(one, isWritten));
  if (value instanceof Map) return [...value.values()].flatMap((one) => writtenIn(one));
  if (value instanceof Set) return [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, own]) =>
    oursUntilTyped.has(name) && typeof own === 'string' && isOurs(own)
      ? []
      : // What a bar stands off from is typed; every other `from` is a word of ours.
        writtenIn(own, written.has(name) || (name === 'from' && 'distance_m' in value)),
  );
}

/** Places for page numbers; digests; sheets of a drawing. */
const names = /\{pages?\}|\b[0-9a-f]{12,64}\b|\b\d[A-Z]\b/gu;
/** Units, notes, pages of core, standards, and the letters of formulas. */
const anyLanguage =
  /\b(mm|cm|m|in|ft|N·m|in·lbf|lbf|N|kN|g|kg|h|min|Hz|EUR|JPY|SHA-256|[A-G]#?\d|core\/[\w/-]+|u|B)\b|°C|\d+[sci]/gu;

/** What is left of a text once everything that was said or typed is taken away; nothing when no letter is left. */
function leftOver(text: string, typed: readonly RegExp[]): string {
  let rest = text;
  for (let before = ''; before !== rest; ) {
    before = rest;
    rest = rest.replace(/⟦[^⟦⟧]*⟧/gu, ' ');
  }
  rest = rest.replace(names, ' ');
  for (const one of typed) rest = rest.replace(one, ' ');
  rest = rest.replace(anyLanguage, ' ');
  return /\p{L}/u.test(rest) ? rest.replace(/\s+/gu, ' ').trim() : '';
}

function leaksOf({ tree, data }: { tree: PageTree; data: readonly unknown[] }): string[] {
  const typed = [...new Set(writtenIn(data))]
    .filter((one) => !ours.has(one))
    .flatMap((one) => [one, `${one.charAt(0).toUpperCase()}${one.slice(1)}`])
    .sort((a, b) => b.length - a.length)
    // Whole words: a short name must not eat a part of a word of ours.
    .map(
      (one) =>
        new RegExp(
          `(?<![\\p{L}\\p{N}])${one.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{N}])`,
          'gu',
        ),
    );
  return [...new Set(textsOf(tree).filter((text) => leftOver(text, typed) !== ''))];
}

const papers = allPapers({ ...testOptions, language: bracketing });

describe('every word of a paper', () => {
  it.each(papers.map((one) => [one.tree.paper, one] as const))('is said by its language: %s', (_, paper) => {
    expect(textsOf(paper.tree).some((text) => text.includes('⟦'))).toBe(true);
    expect(leaksOf(paper)).toEqual([]);
  });

  it.each(papers.map((one) => [one.tree.paper, one] as const))(
    'leaves the days of machines to its table for machines: %s',
    (_, { tree }) => {
      expect(textsOf(tree).filter((text) => /\d{4}-\d\d-\d\d/.test(text))).toEqual([]);
    },
  );

  it('would be found if it were not', () => {
    const [{ tree, data } = papers[0]!] = papers;
    const leaking = {
      ...tree,
      blocks: [...tree.blocks, { is: 'paragraph', text: 'left ⟦in⟧ English' } as const],
    };
    expect(leaksOf({ tree: leaking, data })).toEqual(['left ⟦in⟧ English']);
  });
});
