import { describe, expect, test } from 'vitest';
import { emptyPianoForm, formOfPiano, readPianoForm } from './piano-form.ts';

describe('readPianoForm()', () => {
  test('reads a vertical of 85 keys', () => {
    const { piano, problems } = readPianoForm({
      ...emptyPianoForm,
      form: 'vertical',
      size: '1,2 m',
      lastNote: 'A7',
    });
    expect(problems).toEqual({});
    expect(piano).toEqual({
      form: 'vertical',
      size_m: 1.2,
      firstKey: 1,
      lastKey: 85,
      referencePitch_hz: 440,
    });
  });

  test('reads a size in inches', () => {
    expect(readPianoForm({ ...emptyPianoForm, form: 'grand', size: '71 in' }).piano?.size_m).toBeCloseTo(
      1.8034,
      6,
    );
  });

  test('names every field that does not fit, and describes nothing then', () => {
    const { piano, problems } = readPianoForm({
      ...emptyPianoForm,
      form: 'grand',
      firstNote: 'C9',
      pitch: '44',
      size: '1.8',
      year: 'old',
    });
    expect(piano).toBeUndefined();
    expect(Object.keys(problems).sort()).toEqual(['firstNote', 'pitch', 'size', 'year']);
  });

  test('takes a size and a year to the ends of their ranges and no further', () => {
    const problemsOf = (typed: { size?: string; year?: string }) =>
      Object.keys(readPianoForm({ ...emptyPianoForm, form: 'grand', ...typed }).problems);
    for (const size of ['500', '4000']) expect(problemsOf({ size })).toEqual([]);
    for (const size of ['499', '4001']) expect(problemsOf({ size })).toEqual(['size']);
    for (const year of ['1700', '2200']) expect(problemsOf({ year })).toEqual([]);
    for (const year of ['1699', '2201', '1900.5']) expect(problemsOf({ year })).toEqual(['year']);
  });

  test('refuses a compass that runs downwards', () => {
    const { problems } = readPianoForm({ ...emptyPianoForm, form: 'grand', firstNote: 'C8', lastNote: 'A0' });
    expect(problems.lastNote).toContain('above the first');
  });

  test('says nothing of a piano whose form is not known', () => {
    expect(readPianoForm(emptyPianoForm)).toEqual({ piano: undefined, problems: {} });
  });

  test('a description comes back from its own form', () => {
    const typed = {
      ...emptyPianoForm,
      form: 'grand' as const,
      size: '1800',
      maker: 'Invented',
      year: '1921',
    };
    const { piano } = readPianoForm(typed);
    const standing = {
      kind: 'piano-described',
      v: 1,
      entry: '',
      step: 1,
      at: '',
      by: '',
      ...piano!,
    } as const;
    expect(readPianoForm(formOfPiano(standing)).piano).toEqual(piano);
  });
});
