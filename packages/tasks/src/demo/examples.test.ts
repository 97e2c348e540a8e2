/* The invented pianos are as pianos are: what is asked of their scales here is common practice, no source. */
import { analyseScale, hertz, metres, type ScaleNote } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { examplePiano, type TrueNote } from '../testing/example-pianos.ts';

function scaleNoteOf(note: TrueNote): ScaleNote {
  const speakingLength = metres(note.speakingLength_m);
  const [bareFront, bareBack] = [metres(note.bareFront_m), metres(note.bareBack_m)];
  return {
    key: note.key,
    section: note.section,
    bridge: note.bridge,
    strings: note.strings,
    frequency: hertz(note.frequency_hz),
    string:
      note.winding === 'plain'
        ? { kind: 'plain', speakingLength, diameter: metres(note.wireDiameter_m) }
        : {
            kind: 'wound',
            speakingLength,
            coreDiameter: metres(note.wireDiameter_m),
            layers: note.layers.map((layer) => ({
              wireDiameter: metres(layer.wireDiameter_m),
              bareFront,
              bareBack,
            })),
          },
  };
}

const pairsIn = (notes: readonly TrueNote[]): (readonly [TrueNote, TrueNote])[] =>
  notes.slice(1).map((note, index) => [notes[index]!, note]);

describe.each([
  { folder: 'grand', keys: 88, strings: 224, load_kN: [160, 170], tensions: [685, 760] },
  { folder: 'vertical', keys: 85, strings: 214, load_kN: [140, 160], tensions: [665, 725] },
] as const)('the invented $folder', ({ folder, keys, strings, load_kN, tensions }) => {
  const { job, truth } = examplePiano(folder);
  const analysis = analyseScale(truth.notes.map(scaleNoteOf));

  it('has every note once, in sections and unisons that fill the compass', () => {
    expect(truth.notes.map(({ key }) => key)).toEqual(Array.from({ length: keys }, (_, index) => index + 1));
    for (const runs of [job.sections, job.unisons]) {
      expect(runs[0]?.firstKey).toBe(job.piano.firstKey);
      expect(runs.at(-1)?.lastKey).toBe(job.piano.lastKey);
      runs.slice(1).forEach((run, index) => {
        expect(run.firstKey).toBe(runs[index]!.lastKey + 1);
      });
    }
    expect(job.title).toMatch(/invented/);
  });

  it('bears the load of its kind, with tensions that suit each sort of string', () => {
    expect(analysis.totalStrings).toBe(strings);
    expect(analysis.total / 1000).toBeGreaterThan(load_kN[0]);
    expect(analysis.total / 1000).toBeLessThan(load_kN[1]);
    for (const { key, note, tension, breakShare } of analysis.notes) {
      const [low, high] =
        note.string.kind === 'plain' ? tensions : note.strings === 1 ? [880, 1150] : [670, 840];
      expect(tension, `key ${key}`).toBeGreaterThan(low);
      expect(tension, `key ${key}`).toBeLessThan(high);
      expect(breakShare, `key ${key}`).toBeGreaterThan(0.32);
      expect(breakShare, `key ${key}`).toBeLessThan(0.7);
    }
  });

  it('has lengths that fall smoothly inside each section', () => {
    for (const [lower, upper] of pairsIn(truth.notes)) {
      if (lower.section !== upper.section) continue;
      const ratio = upper.speakingLength_m / lower.speakingLength_m;
      expect(ratio, upper.note).toBeLessThan(1);
      // An octave never more than halves, but for the half millimetre the pins were set to.
      expect(ratio, upper.note).toBeGreaterThan(2 ** (-1 / 12) - 0.0005 / lower.speakingLength_m);
    }
  });

  it('has sizes that never rise to the treble, each for two notes or more, and windings that only get thinner', () => {
    for (const kind of ['plain', 'wound'] as const) {
      const notes = truth.notes.filter(({ winding }) => winding === kind);
      const runs = new Map<string, number>();
      for (const { size } of notes) runs.set(size, (runs.get(size) ?? 0) + 1);
      expect([...runs.values()].every((length) => length >= 2)).toBe(true);
      for (const [lower, upper] of pairsIn(notes))
        expect(upper.wireDiameter_m, upper.note).toBeLessThanOrEqual(lower.wireDiameter_m);
    }
    const overAll = ({ wireDiameter_m, layers }: TrueNote): number =>
      wireDiameter_m + 2 * layers.reduce((sum, layer) => sum + layer.wireDiameter_m, 0);
    const wound = truth.notes.filter(({ winding }) => winding === 'wound');
    for (const [lower, upper] of pairsIn(wound)) expect(overAll(upper)).toBeLessThan(overAll(lower));
  });
});
