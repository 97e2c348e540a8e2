import { describe, expect, it } from 'vitest';
import { foldJob } from '../fold/fold-job.ts';
import { asFoundRecord } from '../record/as-found-record.ts';
import { entryOf } from '../testing/arbitrary-entries.ts';
import type { Fact, FactOf } from './index.ts';
import { factSchema } from './index.ts';
import { instrumentUncertainty } from './instrument-described.ts';

const micrometer: FactOf<'instrument-described'> = {
  kind: 'instrument-described',
  v: 1,
  instrument: 'micrometer 2',
  unit: 'mm',
  resolution: 0.001,
};
const wire = (value: number): Fact => ({
  kind: 'reading',
  v: 1,
  quantity: 'wire-diameter',
  place: { key: 40 },
  value_si: value / 1000,
  asRead: { value, unit: 'mm' },
  origin: 'measured',
  stage: 'as found',
  instrument: 'micrometer 2',
});
const uncertaintyWith = (...facts: readonly Fact[]): number | undefined => {
  const piano: Fact[] = [
    { kind: 'job-opened', v: 1, title: 'one note' },
    { kind: 'piano-described', v: 1, form: 'grand', firstKey: 40, lastKey: 40, referencePitch_hz: 440 },
  ];
  const job = foldJob([...piano, ...facts].map((fact, index) => entryOf(index, index + 1, fact)));
  return asFoundRecord(job).notes[0]!.figures['wire-diameter']!.standardUncertainty;
};

describe('instrumentUncertainty()', () => {
  it('takes a limit for rectangular, and halves what is stated for k = 2', () => {
    // JCGM 100:2008, 4.3.7: a/√3; 4.3.3: U/k.
    const of = (value: number, as: 'limit' | 'expanded, k = 2' | 'standard') =>
      instrumentUncertainty({ unit: 'mm', stated: { value, as } });
    expect(of(0.003, 'limit')).toBeCloseTo(0.003e-3 / Math.sqrt(3), 12);
    expect(of(0.004, 'expanded, k = 2')).toBeCloseTo(2e-6, 12);
    expect(of(0.002, 'standard')).toBeCloseTo(2e-6, 12);
    expect(instrumentUncertainty({ unit: 'mm', stated: undefined })).toBe(0);
  });
});

describe('a reading of a described instrument', () => {
  it('is worth no more than the step of its display', () => {
    // JCGM 100:2008, F.2.2.1: r/√12.
    expect(uncertaintyWith(micrometer, wire(1.025))).toBeCloseTo(1e-6 / Math.sqrt(12), 12);
    expect(uncertaintyWith(wire(1.025))).toBeUndefined();
  });

  it('adds what is stated of the instrument, which more readings do not lower', () => {
    const stated: Fact = { ...micrometer, stated: { value: 0.003, as: 'limit' } };
    const limit = 0.003e-3 / Math.sqrt(3);
    const one = uncertaintyWith(stated, wire(1.025))!;
    // JCGM 100:2008, 5.1.2: the root of the sum of squares.
    expect(one).toBeCloseTo(Math.hypot(limit, 1e-6 / Math.sqrt(12)), 12);
    const many = uncertaintyWith(stated, ...Array.from({ length: 9 }, () => wire(1.025)))!;
    expect(many).toBeGreaterThan(limit);
  });

  it('may come from a journal that knew neither use nor uncertainty', () => {
    expect(factSchema.parse(micrometer)).toEqual(micrometer);
  });
});
