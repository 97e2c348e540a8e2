import { describe, expect, it } from 'vitest';
import { todayHere } from './day-field.tsx';

describe('todayHere()', () => {
  it('is the day of the device, from its first minute to its last', () => {
    expect(todayHere(new Date(2026, 0, 5, 0, 0))).toBe('2026-01-05');
    expect(todayHere(new Date(2026, 10, 25, 23, 59))).toBe('2026-11-25');
  });
});
