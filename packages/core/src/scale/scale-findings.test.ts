import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import type { PlainString } from '../strings/index.ts';
import { hertz, inches, kilogramsPerCubicMetre, metres, millimetres } from '../units/index.ts';
import { makeLanguage } from '../words/index.ts';
import {
  analyseScale,
  COMMON_SHOP_POLICY,
  type ScaleFinding,
  type ScaleNote,
  type ScaleRule,
  type ShopPolicy,
  scaleFindings,
  scaleRules,
  withLimit,
} from './index.ts';
import { changed, inventedGrand } from './testing/invented-grand.ts';
import { meanAndDeviation, seededNormals } from './testing/seeded-normals.ts';

const quick = { uncertainties: 'left out', woundStrings: 'core formula' } as const;

/** Limits that the invented grand does not touch, so that a test sees only what it has changed. */
const lenient: ShopPolicy = (
  [
    ['highestBreakShare', 0.95],
    ['lowestBreakSharePlain', 0.05],
    ['lowestBreakShareWound', 0.05],
    ['largestTensionStepOverBreak', 1],
    ['largestTensionStepInSection', 0.5],
    ['largestInharmonicityStepOverBreak', 5],
    ['largestImpedanceStepOverBreak', 5],
    ['leastLengthGrowthInTenor', 0.01],
    ['largestLoadStepOverStrut', 2],
  ] as const
).reduce((policy, [name, value]) => withLimit(policy, name, value, 'test'), COMMON_SHOP_POLICY);

const grand = inventedGrand();

function findings(notes: readonly ScaleNote[], policy: ShopPolicy): ScaleFinding[] {
  return scaleFindings(analyseScale(notes, quick), policy);
}
function beyond(notes: readonly ScaleNote[], policy: ShopPolicy): ScaleFinding[] {
  return findings(notes, policy).filter(({ weight }) => weight === 'beyond a limit');
}
function ofRule(all: readonly ScaleFinding[], rule: ScaleRule): ScaleFinding[] {
  return all.filter((finding) => finding.rule === rule);
}
function withString(key: number, change: Partial<PlainString>): ScaleNote[] {
  return changed(grand, (note) =>
    note.key === key ? { string: { ...(note.string as PlainString), ...change } } : undefined,
  );
}

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

  it('gathers neighbours into one finding and gaps into two', () => {
    const policy = withLimit(lenient, 'highestBreakShare', 0.69, 'test');
    const together = ofRule(beyond(grand, policy), 'break share over the ceiling');
    expect(together).toHaveLength(1);
    expect(together[0]!.keys).toEqual([86, 87, 88]);
    expect(together[0]!.sentence).toContain('on 3 notes, A#7 to C8');
    const apart = beyond(
      grand.filter((note) => note.key !== 87),
      policy,
    );
    expect(apart.map(({ keys }) => keys)).toEqual([[86], [88]]);
  });

  it('has a floor of its own for plain and for wound strings', () => {
    const plain = beyond(grand, withLimit(lenient, 'lowestBreakSharePlain', 0.355, 'test'));
    expect(plain).toHaveLength(1);
    expect(plain[0]).toMatchObject({ rule: 'break share under the floor', keys: [21, 22] });
    const wound = beyond(grand, withLimit(lenient, 'lowestBreakShareWound', 0.365, 'test'));
    expect(wound).toHaveLength(1);
    expect(wound[0]).toMatchObject({ rule: 'break share under the floor', keys: [1] });
  });

  it('finds steps over a break by tension, inharmonicity and impedance, and none inside a section', () => {
    const policy = withLimit(
      withLimit(
        withLimit(lenient, 'largestTensionStepOverBreak', 0.1, 'test'),
        'largestInharmonicityStepOverBreak',
        0.5,
        'test',
      ),
      'largestImpedanceStepOverBreak',
      0.1,
      'test',
    );
    const steps = beyond(grand, policy);
    expect(steps.map(({ rule, keys }) => [rule, keys])).toEqual([
      ['tension step over a break', [20, 21]],
      ['inharmonicity step over a break', [20, 21]],
      ['impedance step over a break', [10, 11]], // one string gives way to two
      ['impedance step over a break', [20, 21]],
    ]);
    const { notes } = analyseScale(grand, quick);
    expect(steps[0]!.figure).toBeCloseTo(notes[19]!.tension / notes[20]!.tension - 1, 12);
    expect(steps[0]!.sentence).toContain(
      'Over the break from bass to tenor, E2 to F2, string tension goes from',
    );
  });

  it('finds a wire that is out of line within a section, on both of its sides', () => {
    const steps = beyond(withString(50, { diameter: inches(0.046) }), {
      ...lenient,
      limits: {
        ...lenient.limits,
        largestTensionStepInSection: COMMON_SHOP_POLICY.limits.largestTensionStepInSection,
      },
    });
    expect(steps.map(({ rule, keys }) => [rule, keys])).toEqual([
      ['tension step within a section', [49, 50]],
      ['tension step within a section', [50, 51]],
    ]);
  });

  it('judges the step from singles to pairs, and from wound to plain, as a break within a section', () => {
    const notes = changed(grand, (note) =>
      note.key === 11
        ? { frequency: hertz(note.frequency * 1.15) }
        : note.key > 20 && note.key < 44
          ? { section: 'bass' }
          : undefined,
    );
    const steps = ofRule(
      beyond(notes, withLimit(lenient, 'largestTensionStepOverBreak', 0.1, 'test')),
      'tension step over a break',
    );
    expect(steps.map(({ keys }) => keys)).toEqual([
      [10, 11],
      [20, 21],
    ]);
    expect(steps[0]!.sentence).toMatch(
      /^Within bass, from 1 to 2 strings a note, F#1 to G1, string tension goes from/,
    );
    expect(steps[1]!.sentence).toMatch(/^Within bass, from wound to plain strings, E2 to F2/);
  });

  it('does not compare over a gap', () => {
    const policy = withLimit(lenient, 'largestTensionStepOverBreak', 0.01, 'test');
    const gapped = grand.filter((note) => note.key !== 21);
    expect(
      ofRule(beyond(gapped, policy), 'tension step over a break').some(({ keys }) => keys[0] === 20),
    ).toBe(false);
  });

  it('finds a foreshortened tenor by the growth of its speaking lengths', () => {
    // The lowest plain notes all as long as A#2: a tenor cut short.
    const short = changed(grand, (note) =>
      note.key >= 21 && note.key <= 26
        ? {
            string: {
              ...(note.string as PlainString),
              speakingLength: metres(grand[26]!.string.speakingLength * 1.02 ** (27 - note.key)),
            },
          }
        : undefined,
    );
    const [finding, ...others] = ofRule(
      beyond(short, withLimit(lenient, 'leastLengthGrowthInTenor', 0.035, 'test')),
      'foreshortened tenor',
    );
    expect(others).toEqual([]);
    expect(finding!.keys).toEqual([21, 22, 23, 24, 25, 26]);
    expect(finding!.figure).toBeCloseTo(0.02, 9);
    expect(finding!.sentence).toMatch(/from A#2 down to F2 .* grows by 2\.0 % a note \(limit 3\.5 %, test\)/);
    expect(ofRule(beyond(grand, COMMON_SHOP_POLICY), 'foreshortened tenor')).toEqual([]);
  });

  it('finds strings of one unison that pull unevenly', () => {
    const string = grand[48]!.string as PlainString;
    const notes = changed(grand, (note) =>
      note.key === 49
        ? { individualStrings: [string, { ...string, diameter: metres(string.diameter * 1.02) }, string] }
        : undefined,
    );
    const [finding] = ofRule(beyond(notes, lenient), 'uneven tension within a unison');
    expect(finding!.keys).toEqual([49]);
    expect(finding!.figure).toBeCloseTo(1.02 ** 2 - 1, 9);
  });

  it('questions a note with fewer strings than the one below', () => {
    const notes = changed(grand, (note) => (note.key === 30 ? { strings: 2 } : undefined));
    const [finding] = ofRule(findings(notes, lenient), 'fewer strings than the note below');
    expect(finding).toMatchObject({ keys: [29, 30], figure: 2, weight: 'for information' });
  });

  it('tells the load on either side of every strut and judges the step', () => {
    const told = ofRule(findings(grand, lenient), 'load beside a strut');
    expect(told.map(({ keys }) => keys)).toEqual([
      [20, 21],
      [43, 44],
      [64, 65],
    ]);
    const judged = beyond(grand, withLimit(lenient, 'largestLoadStepOverStrut', 0.2, 'test'));
    expect(judged.map(({ rule, keys }) => [rule, keys])).toEqual([['load step over a strut', [20, 21]]]);
  });

  it('judges the total load from above always, from below only for a whole compass', () => {
    const heavy = withLimit(lenient, 'highestTotalLoad', 150_000, 'test');
    expect(ofRule(beyond(grand, heavy), 'total load')[0]!.sentence).toMatch(
      /pull 182\.5 kN, over limit 150\.0 kN, test/,
    );
    const light = withLimit(lenient, 'lowestTotalLoad', 200_000, 'test');
    expect(ofRule(beyond(grand, light), 'total load')).toHaveLength(1);
    const part = findings(grand.slice(0, 40), light);
    expect(ofRule(part, 'total load')[0]).toMatchObject({ weight: 'for information' });
    expect(ofRule(part, 'total load')[0]!.sentence).toContain('The 40 notes that can be computed');
  });

  it('says where a wire lies outside the strength table', () => {
    const [finding] = ofRule(
      findings(withString(60, { diameter: millimetres(0.6) }), lenient),
      'outside the strength table',
    );
    expect(finding!.keys).toEqual([60]);
    expect(finding!.sentence).toContain('lies outside the sizes of ASTM A228 minimum');
  });

  it('says when the readings cannot tell whether a limit is passed', () => {
    const analysis = analyseScale(grand, { woundStrings: 'core formula' });
    const share = analysis.notes[87]!.breakShare;
    const near = scaleFindings(analysis, withLimit(lenient, 'highestBreakShare', share - 0.001, 'test'));
    const [finding] = ofRule(near, 'break share over the ceiling');
    expect(finding!.isClear).toBe(false);
    expect(finding!.sentence).toContain('measure again');
    expect(finding!.standardUncertainty).toBe(analysis.notes[87]!.standardUncertainties!.breakShare);
    const clear = scaleFindings(analysis, withLimit(lenient, 'highestBreakShare', 0.65, 'test'));
    expect(ofRule(clear, 'break share over the ceiling')[0]!.isClear).toBe(true);
  });

  it('lets errors that both notes share cancel in a step', () => {
    const step = (policy: typeof COMMON_SHOP_POLICY.uncertainties) =>
      ofRule(
        scaleFindings(
          analyseScale(grand, { woundStrings: 'core formula', uncertainties: policy }),
          withLimit(lenient, 'largestTensionStepOverBreak', 0.01, 'test'),
        ),
        'tension step over a break',
      );
    const usual = step(COMMON_SHOP_POLICY.uncertainties);
    const unsurePitch = step({ ...COMMON_SHOP_POLICY.uncertainties, frequency_cents: 50 });
    usual.forEach((finding, index) => {
      expect(unsurePitch[index]!.standardUncertainty! / finding.standardUncertainty!).toBeCloseTo(1, 2);
    });
  });

  it('gives every judged figure an uncertainty that agrees with Monte Carlo', () => {
    const plain = grand[48]!.string as PlainString;
    const scale = changed(grand, (note) =>
      note.key === 49
        ? { individualStrings: [plain, { ...plain, diameter: metres(plain.diameter * 1.05) }, plain] }
        : undefined,
    );
    const strict = (
      [
        ['largestTensionStepOverBreak', 1e-6],
        ['leastLengthGrowthInTenor', 0.5],
        ['largestLoadStepOverStrut', 1e-6],
        ['largestTensionSpreadInUnison', 1e-6],
      ] as const
    ).reduce((policy, [name, value]) => withLimit(policy, name, value, 'test'), lenient);
    const judged = (notes: readonly ScaleNote[], uncertainties?: 'left out') =>
      scaleFindings(analyseScale(notes, { woundStrings: 'core formula', uncertainties }), strict).filter(
        ({ rule, keys }) =>
          (rule === 'tension step over a break' && keys[0] === 20) ||
          rule === 'foreshortened tenor' ||
          (rule === 'load step over a strut' && keys[0] === 20),
      );
    const stated = judged(scale);
    expect(stated).toHaveLength(3);

    const normal = seededNormals(99);
    const { wireDiameter_m, diameterOver_m, speakingLength_m, bareEnd_m } = COMMON_SHOP_POLICY.uncertainties;
    const { windingDensity, steelDensity } = COMMON_SHOP_POLICY.uncertainties;
    const off = (value: number, uncertainty: number) => metres(value + uncertainty * normal());
    const draws = 400;
    const figures = stated.map((): number[] => []);
    for (let draw = 0; draw < draws; draw += 1) {
      const winding = kilogramsPerCubicMetre(8930 * (1 + windingDensity * normal()));
      const steel = kilogramsPerCubicMetre(7850 * (1 + steelDensity * normal()));
      const drawn = changed(grand.slice(14, 30), ({ string }) => {
        const shared = { speakingLength: off(string.speakingLength, speakingLength_m), steelDensity: steel };
        if (string.kind === 'plain') {
          return { string: { kind: 'plain', diameter: off(string.diameter, wireDiameter_m), ...shared } };
        }
        const coreDiameter = off(string.coreDiameter, wireDiameter_m);
        const [layer] = string.layers;
        const over = off(string.coreDiameter + 2 * layer!.wireDiameter, diameterOver_m);
        return {
          string: {
            kind: 'wound',
            coreDiameter,
            layers: [
              {
                wireDiameter: metres((over - coreDiameter) / 2),
                bareFront: off(layer!.bareFront, bareEnd_m),
                bareBack: off(layer!.bareBack, bareEnd_m),
              },
            ],
            windingDensity: winding,
            ...shared,
          },
        };
      });
      for (const [index, finding] of judged(drawn, 'left out').entries())
        figures[index]!.push(finding.figure);
    }
    stated.forEach((finding, index) => {
      const ratio = finding.standardUncertainty! / meanAndDeviation(figures[index]!).deviation;
      expect(Math.abs(ratio - 1), `${finding.rule}: ${ratio}`).toBeLessThan(4 / Math.sqrt(2 * draws) + 0.01);
    });

    const [uneven] = ofRule(
      scaleFindings(analyseScale(scale, { woundStrings: 'core formula' }), strict),
      'uneven tension within a unison',
    );
    // 2·√2·u(d)/d from two diameters, and the lengths with them.
    expect(uneven!.standardUncertainty!).toBeGreaterThan((2 * Math.SQRT2 * wireDiameter_m) / plain.diameter);
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

describe('the shop policy', () => {
  it('is plain data: it comes back from JSON as it was', () => {
    expect(JSON.parse(JSON.stringify(COMMON_SHOP_POLICY))).toEqual(COMMON_SHOP_POLICY);
  });

  it('tags every default as common practice', () => {
    for (const limit of Object.values(COMMON_SHOP_POLICY.limits))
      expect(limit.source).toBe('common practice');
    expect(COMMON_SHOP_POLICY.uncertainties.source).toBe('common practice');
    expect(COMMON_SHOP_POLICY.pins.source).toBe('common practice');
  });

  it('changes one limit and leaves the policy it came from alone', () => {
    const own = withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.6, 'our shop');
    expect(own.limits.highestBreakShare).toMatchObject({ value: 0.6, source: 'our shop', unit: '1' });
    expect(COMMON_SHOP_POLICY.limits.highestBreakShare.value).toBe(0.65);
    expect({ ...own.limits, highestBreakShare: 0 }).toEqual({
      ...COMMON_SHOP_POLICY.limits,
      highestBreakShare: 0,
    });
  });

  it('refuses a limit that cannot be one', () => {
    for (const wrong of [0, -1, Number.NaN]) {
      expect(() => withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', wrong, 'x')).toThrow(/must be > 0/);
    }
    expect(() => withLimit(COMMON_SHOP_POLICY, 'notesLookedAtInTenor', 2.5, 'x')).toThrow(
      /whole number from 2/,
    );
    expect(() => withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.6, ' ')).toThrow(SyntaxError);
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
