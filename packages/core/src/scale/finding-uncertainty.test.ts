import { describe, expect, it } from 'vitest';
import type { PlainString } from '../strings/index.ts';
import { kilogramsPerCubicMetre, metres } from '../units/index.ts';
import { analyseScale, COMMON_SHOP_POLICY, type ScaleNote, scaleFindings, withLimit } from './index.ts';
import { grand, lenient, ofRule } from './testing/findings-of.ts';
import { changed } from './testing/invented-grand.ts';
import { meanAndDeviation, seededNormals } from './testing/seeded-normals.ts';

describe('the uncertainty of a finding', () => {
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
});
