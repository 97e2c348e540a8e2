import {
  english,
  inches,
  inchPounds,
  type Language,
  lowPinPattern,
  metres,
  millimetres,
  newtonMetres,
  pinSizeAdvice,
  sectionMean,
  seededChance,
} from '@becket/core';
import type { AppraisalFigures, PinTorqueFigures } from '../appraisal-report/appraisal-figures.ts';

/** Figures as they would be handed in for the appraised job: twelve pins of two sections, some of them low. */
export function appraisalFigures(language: Language = english): AppraisalFigures {
  const pins = [9, 10.5, 14, 15.5, 16, 14.5, 8.5, 9.5, 15, 14, 17, 18].map(
    (value, index): PinTorqueFigures => {
      const key = 21 + 2 * index;
      const grip = newtonMetres(value);
      return {
        key,
        string: 1,
        note: `key ${key}`,
        name: `key ${key} string 1`,
        section: key <= 32 ? 'bass' : 'treble',
        readings: [{}],
        byKind: { slack: grip },
        grip: {
          grip,
          standardUncertainty: newtonMetres(0.6),
          ownUncertainty: newtonMetres(0.5),
          sharedUncertainty: newtonMetres(0.3),
          from: 'slack string',
          pullFromReadings: undefined,
        },
        whyNoGrip: undefined,
        pull: undefined,
        margin: undefined,
        marginUncertainty: undefined,
        isLow: value < 13.6,
        feels: index === 0 ? ['spongy'] : [],
      };
    },
  );
  const sections = ['bass', 'treble'].map((section) => {
    const own = pins.filter((pin) => pin.section === section);
    const grips = own.map(({ grip }) => grip!);
    const all = section === 'bass' ? 24 : 36;
    return {
      section,
      pins: all,
      read: own.length,
      withGrip: own.length,
      low: own.filter(({ isLow }) => isLow).length,
      mean: sectionMean(grips, { pins: all, random: seededChance(1) }),
      lowest: [...own].sort((a, b) => a.grip!.grip - b.grip!.grip)[0],
      byKind: [{ kind: 'slack' as const, count: own.length, mean: newtonMetres(12.5) }],
      zone: { size: 6, chanceMissed: 0.12, next: { key: 28, string: 2 } },
    };
  });
  return {
    torque: {
      field: { pins: Array.from({ length: 60 }) },
      pins,
      sections,
      bins: Array.from({ length: 11 }, (_, index) => ({
        from: newtonMetres(8 + index),
        to: newtonMetres(9 + index),
        pins: pins.filter(({ grip }) => Math.floor(grip!.grip) === 8 + index),
      })),
      zone: { size: 6, chanceMissed: 0.2, next: undefined },
      lowBelow: inchPounds(120),
      lowBelowFrom: 'the firm figure of the rule (common practice)',
      pattern: lowPinPattern(
        pins.map(({ key, isLow }) => ({ key, string: 1, isLow: isLow === true })),
        {
          sections: [
            { section: 'bass', firstKey: 21, lastKey: 32 },
            { section: 'treble', firstKey: 33, lastKey: 44 },
          ],
          random: seededChance(1),
        },
        language,
      ),
      season: { cautions: [] },
      questions: [{ sentence: 'key 21 string 1: 9 N·m reads far from its neighbours. Read it again.' }],
    },
    pins: {
      policy: { source: 'common practice' },
      groups: [
        {
          asFound: '2/0',
          pins: [{}, {}, {}],
          median: inches(0.282),
          smallest: inches(0.281),
          largest: inches(0.283),
          advice: pinSizeAdvice({ readings: pins.map(({ grip }) => grip!.grip), asFound: '2/0' }, language),
          adviceRestsOn: 'Grip of 12 pins of this size.',
        },
      ],
      testPins: [
        {
          name: 'key 40 string 1',
          diameter: millimetres(7.26),
          torque: newtonMetres(15.2),
          feel: 'holds',
          note: undefined,
          leftOutBecause: undefined,
        },
      ],
      lawSentence: '2 test pins are needed to say what a larger pin gains: 1 counts.',
      cautions: ['Support the block from beneath before a pin is driven.'],
    },
    comparison: {
      days: ['2019-05-03'],
      lines: [
        {
          label: 'cracks at the bridge pins',
          place: { section: 'treble', key: 40 },
          earlierDay: '2019-05-03',
          change: 'grew',
          grownBy: metres(0.021),
          sentence: 'Cracks at the bridge pins, C4: 21 mm longer than on 3 May 2019.',
        },
        {
          label: 'bridge cap',
          place: {},
          earlierDay: '2019-05-03',
          change: 'still sound',
          grownBy: undefined,
          sentence: 'Bridge cap: still sound.',
        },
      ],
    },
    advice: {
      verdict: 'go with conditions',
      reasons: [
        {
          about: 'structure',
          verdict: 'go with conditions',
          sentence: 'Cracks at the bridge pins, C4 (grave).',
          figure: '62 mm',
          condition: 'The bridge is mended before stringing.',
          deferTo: undefined,
        },
      ],
      unknown: [
        {
          what: 'Nobody has looked for cracks in the pin block.',
          wouldSettle: 'Look for cracks in the pin block, with a light and with the action out.',
          isNeededFirst: true,
        },
      ],
      cautions: ['A strung piano pulls with many tonnes.'],
      source: 'common practice, no source',
    },
  };
}
