import { describe, expect, test } from 'vitest';
import { observable } from './observable.ts';

describe('observable()', () => {
  test('tells its listeners of a change, and not of the same value again', () => {
    const source = observable({ count: 1 });
    let told = 0;
    const stop = source.subscribe(() => {
      told += 1;
    });
    source.update({ count: 2 });
    source.set(source.get());
    expect(told).toBe(1);
    expect(source.get()).toEqual({ count: 2 });
    stop();
    source.update({ count: 3 });
    expect(told).toBe(1);
  });
});
