import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { hertz } from '../units/index.ts';
import { makeLanguage } from '../words/index.ts';
import { analyseScale, COMMON_SHOP_POLICY, scaleFindings, scaleRules, withLimit } from './index.ts';
import { beyond, findings, grand, lenient, quick } from './testing/findings-of.ts';

describe('scaleFindings()', () => {
  it('finds nothing beyond lenient limits, and tells the loads all the same', () => {
    const all = findings(grand, lenient);
    expect(all.filter(({ weight }) => weight === 'beyond a limit')).toEqual([]);
    expect(all.map(({ rule }) => rule)).toEqual([
      'load by bridge',
      'load by bridge',
      'load beside a strut',
      'load beside a strut',
      'load beside a strut',
      'total load',
    ]);
  });

  it('names rule, figure, limit and whose limit it is', () => {
    const [finding] = beyond(grand, withLimit(lenient, 'highestBreakShare', 0.705, 'our shop'));
    expect(finding).toMatchObject({ rule: 'break share over the ceiling', keys: [88], unit: '1' });
    expect(finding!.sentence).toBe(
      'Break share is over the ceiling at C8: 70.8 % by ASTM A228 minimum (limit 70.5 %, our shop).',
    );
    expect(finding!.remark).toContain('usually tests above this figure');
  });

  it('keeps to the order of its rules and gives every finding a sentence', () => {
    const all = findings(grand, COMMON_SHOP_POLICY);
    const places = all.map(({ rule }) => scaleRules.indexOf(rule));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    for (const { sentence } of all) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });

  it('of no notes is nothing', () => {
    expect(findings([], COMMON_SHOP_POLICY)).toEqual([]);
    expect(findings([{ ...grand[48]!, frequency: hertz(440) }], lenient).map(({ rule }) => rule)).toEqual([
      'load by bridge',
      'total load',
    ]);
  });
});

describe('a finding in German', () => {
  it('says its rule, its figures and its limit, and leaves what the shop typed as it is', () => {
    const policy = withLimit(lenient, 'largestTensionStepInSection', 0.01, 'Haus {A}');
    const [step] = scaleFindings(analyseScale(grand, quick), policy, makeLanguage('de-DE', german)).filter(
      ({ rule }) => rule === 'tension step within a section',
    );
    expect(step!.sentence).toMatch(
      /^In bass, A0 zu A#0: Zugkraft der Saite von \d+ N auf \d+ N, ein Sprung von \d,\d % \(Grenze 1 %, Haus \{A\}\)\.$/,
    );
    const [share] = scaleFindings(
      analyseScale(grand, quick),
      withLimit(lenient, 'highestBreakShare', 0.5, 'Haus'),
      makeLanguage('de-DE', german),
    );
    expect(share!.sentence).toMatch(
      /^Der Anteil an der Bruchlast .* nach Mindestwert ASTM A228, am höchsten/,
    );
    expect(share!.remark).toMatch(/^Guter neuer Klaviersaitendraht/);
  });
});
