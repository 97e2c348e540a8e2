import { describe, expect, it } from 'vitest';
import { entryForm } from './entry-form.ts';

/** A form for readings of one note after the other, over a journal that answers when it is told to. */
function readings() {
  const entry = entryForm({ note: 1, value: '' });
  const journal: { note: number; value: string; end: (refusal?: string) => void }[] = [];
  const keep = () =>
    entry.keep((form) => {
      if (form.value === '') throw new RangeError('a value is needed, nothing was found');
      const kept = new Promise<void>((done, failed) =>
        journal.push({
          ...form,
          end: (refusal) => (refusal === undefined ? done() : failed(new RangeError(refusal))),
        }),
      );
      return { next: { note: form.note + 1, value: '' }, kept };
    });
  const asked = () => journal.map(({ note, value }) => [note, value]);
  return { entry, journal, keep, asked };
}

describe('entryForm()', () => {
  it('takes the next value while the one before is still being kept', async () => {
    const { entry, journal, keep, asked } = readings();
    entry.take({ value: '142' });
    const first = keep();
    entry.take({ value: '92' });
    const second = keep();
    expect(asked()).toEqual([
      [1, '142'],
      [2, '92'],
    ]);
    for (const { end } of journal) end();
    await Promise.all([first, second]);
    expect(entry.state.get()).toEqual({ form: { note: 3, value: '' }, problem: undefined });
  });

  it('passes over a second press before anything was typed', async () => {
    const { entry, journal, keep, asked } = readings();
    entry.take({ value: '142' });
    const first = keep();
    await keep();
    expect(entry.state.get().problem).toBeUndefined();
    journal[0]!.end();
    await first;
    expect(asked()).toEqual([[1, '142']]);
    // Once it is kept, an empty field is an empty field.
    await keep();
    expect(entry.state.get().problem).toMatch(/a value is needed/);
  });

  it('passes it over as well where the form stays as it is', async () => {
    const entry = entryForm({ limit: '7' });
    let asked = 0;
    let end = () => {};
    const keep = () =>
      entry.keep((form) => {
        asked += 1;
        return { next: form, kept: new Promise<void>((done) => (end = done)) };
      });
    const first = keep();
    await keep();
    expect(asked).toBe(1);
    end();
    await first;
  });

  it('brings back what was refused, with the sentence', async () => {
    const { entry, journal, keep } = readings();
    entry.take({ value: '142' });
    const first = keep();
    journal[0]!.end('the storage is full');
    await first;
    expect(entry.state.get()).toEqual({ form: { note: 1, value: '142' }, problem: 'the storage is full' });
  });

  it('leaves what is being typed when the value before it is refused', async () => {
    const { entry, journal, keep } = readings();
    entry.take({ value: '142' });
    const first = keep();
    entry.take({ value: '9' });
    journal[0]!.end('the storage is full');
    await first;
    expect(entry.state.get()).toEqual({ form: { note: 2, value: '9' }, problem: 'the storage is full' });
  });

  it('keeps the form as it is when there is nothing to keep in it', async () => {
    const { entry, keep, asked } = readings();
    await keep();
    expect(entry.state.get()).toEqual({
      form: { note: 1, value: '' },
      problem: 'a value is needed, nothing was found',
    });
    expect(asked()).toEqual([]);
  });
});
