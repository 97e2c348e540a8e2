import { describe, expect, it } from 'vitest';
import {
  HEAVY_WEAR,
  LIGHT_WEAR,
  nearestSizes,
  simulatedPiano,
} from '../../../core/src/evidence/testing/simulated-piano.ts';
import { computeLine } from './compute-line.ts';

interface Answer {
  readonly choice_index: number[];
  readonly odds: number[];
  readonly bias_m: number;
}

function inferred(readings_m: readonly (number | null)[], diameters_m: readonly number[]): Answer {
  const { text, isError } = computeLine(JSON.stringify({ kind: 'gauge_inference', readings_m, diameters_m }));
  expect(isError, text).toBe(false);
  return JSON.parse(text);
}

describe('gauge_inference', () => {
  it('finds the sizes of worn pianos through a line, whatever the order of the list', () => {
    let [right, rounded, all] = [0, 0, 0];
    for (const wear of [LIGHT_WEAR, HEAVY_WEAR]) {
      for (let seed = 101; seed <= 120; seed += 1) {
        const piano = simulatedPiano(seed, wear);
        const { readings, diameters, sizes } = piano;
        const backwards = [...diameters].reverse();
        const { choice_index, odds } = inferred(readings, backwards);
        const nearest = nearestSizes(piano);
        choice_index.forEach((choice, note) => {
          if (note > 0) expect(backwards[choice]).toBeLessThanOrEqual(backwards[choice_index[note - 1]!]!);
          expect(odds[note]).toBeGreaterThan(0);
          expect(odds[note]).toBeLessThanOrEqual(1);
          if (readings[note] === null) return;
          all += 1;
          if (backwards[choice] === diameters[sizes[note]!]) right += 1;
          if (nearest[note] === sizes[note]) rounded += 1;
        });
      }
    }
    expect(right / all).toBeGreaterThan(0.93);
    expect(right / all).toBeGreaterThan(rounded / all + 0.1);
  });

  it('answers for notes that nobody has read', () => {
    const { choice_index, odds } = inferred([null, 0.00081, null], [0.0008128, 0.0007874]);
    expect(choice_index).toEqual([0, 0, 0]);
    // Towards the bass it can only be as thick or thicker, and there is no thicker one; towards the treble it may change.
    expect(odds[0]).toBeGreaterThanOrEqual(odds[1]!);
    expect(odds[2]).toBeLessThan(odds[1]!);
  });

  it('does not take millimetres for metres', () => {
    const { text, isError } = computeLine(
      '{"kind":"gauge_inference","readings_m":[0.81,0.812],"diameters_m":[0.0008128,0.0007874]}',
    );
    expect(isError).toBe(true);
    expect(text).toContain('readings_m.0: metres are needed, at most 0.01 for a wire');
    expect(text).toContain('found 0.81');
  });

  it('names what is wrong with a line', () => {
    const { text, isError } = computeLine(
      '{"kind":"gauge_inference","readings_m":[0.0008,-1],"diameters_m":[0.0008]}',
    );
    expect(isError).toBe(true);
    expect(text).toContain('readings_m');
  });
});
