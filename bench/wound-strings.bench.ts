import {
  analyseScale,
  fitInharmonicityByLine,
  fitInharmonicityInCents,
  hertz,
  metres,
  millimetres,
  newtons,
  steppedSegmentsOf,
  steppedStringModes,
  type WoundString,
  woundStringModes,
  woundTensionAtPitch,
} from '@becket/core';
import { inventedGrand } from '../packages/core/src/scale/testing/invented-grand.ts';
import { hermiteModes } from '../packages/core/src/strings/testing/hermite-elements.ts';
import { type BenchTopic, type Figure, timed } from './harness.ts';

const oneLayer: WoundString = {
  kind: 'wound',
  speakingLength: metres(1.3),
  coreDiameter: millimetres(1.1),
  layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }],
};
const twoLayers: WoundString = {
  ...oneLayer,
  layers: [
    { wireDiameter: millimetres(0.4), bareFront: millimetres(15), bareBack: millimetres(10) },
    { wireDiameter: millimetres(1), bareFront: millimetres(22), bareBack: millimetres(18) },
  ],
};
/** The same string, a nanometre longer each time. */
const varied = (string: WoundString, turn: number): WoundString => ({
  ...string,
  speakingLength: metres(string.speakingLength + turn * 1e-9),
});

const grand = inventedGrand();
/** Tension, 16 modes and B of every string of the grand, wound or plain, all by exact modes. */
function exactModesOfAll(turn: number): number {
  let sum = 0;
  for (const { string, frequency } of grand) {
    const wound: WoundString =
      string.kind === 'wound'
        ? varied(string, turn)
        : {
            kind: 'wound',
            speakingLength: metres(string.speakingLength + turn * 1e-9),
            coreDiameter: string.diameter,
            layers: [],
          };
    const { value: tension } = woundTensionAtPitch({ string: wound, frequency, stiffness: 'ignored' });
    sum += fitInharmonicityByLine(woundStringModes({ string: wound, tension }).value, 8).inharmonicity;
  }
  return sum;
}

/** How far finite elements are from the exact modes, by elements in half a wave of the sixteenth. */
function convergence(): Figure[] {
  const string = { segments: steppedSegmentsOf(oneLayer), tension: newtons(900), ends: 'pinned' as const };
  const exact = steppedStringModes(string).value;
  const figures = [2, 4, 8, 16, 32].map((elements): Figure => {
    const found = hermiteModes(string, 16, elements);
    return {
      name: `Hermite elements, ${elements} to half a wave: greatest error of 16 modes`,
      value: Math.max(...found.map((frequency, index) => Math.abs(frequency / exact[index]! - 1))),
      unit: '(relative)',
    };
  });
  const { iterations, residual } = steppedStringModes(string);
  return [
    ...figures,
    { name: 'minors: evaluations for 16 modes', value: iterations, unit: '' },
    { name: 'minors: last interval, relative', value: residual, unit: '' },
  ];
}

export const topic: BenchTopic = {
  name: 'wound strings',
  run: () => [
    timed(
      '16 modes, one layer',
      (turn) => woundStringModes({ string: varied(oneLayer, turn), tension: newtons(900) }),
      { calls: 50, aim: 'under 1 ms' },
    ),
    timed(
      '16 modes, two layers of unequal ends',
      (turn) => woundStringModes({ string: varied(twoLayers, turn), tension: newtons(900) }),
      { calls: 50, aim: 'under 1 ms' },
    ),
    timed(
      'tension at pitch, stiffness ignored',
      (turn) =>
        woundTensionAtPitch({ string: varied(oneLayer, turn), frequency: hertz(59), stiffness: 'ignored' }),
      { calls: 100 },
    ),
    timed(
      'tension at pitch, stiffness counted',
      (turn) =>
        woundTensionAtPitch({ string: varied(oneLayer, turn), frequency: hertz(59), stiffness: 'counted' }),
      { calls: 100 },
    ),
    timed(
      'B fitted in cents over 16 partials',
      (turn) =>
        fitInharmonicityInCents(
          woundStringModes({ string: varied(oneLayer, turn), tension: newtons(900) }).value,
        ),
      { calls: 50 },
    ),
    timed('88 notes: tension, 16 exact modes and B of every string', exactModesOfAll, {
      runs: 9,
      aim: 'under 60 ms',
    }),
    timed(
      '88 notes analysed, wound strings by exact modes',
      () => analyseScale(grand, { uncertainties: 'left out' }),
      { runs: 9 },
    ),
    ...convergence(),
  ],
};
