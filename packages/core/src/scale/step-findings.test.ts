import { describe, expect, it } from 'vitest';
import { hertz, inches } from '../units/index.ts';
import { analyseScale, COMMON_SHOP_POLICY, scaleFindings, withLimit } from './index.ts';
import { beyond, grand, lenient, ofRule, quick, withString } from './testing/findings-of.ts';
import { changed } from './testing/invented-grand.ts';

describe('what is told of steps from note to note', () => {
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
});
