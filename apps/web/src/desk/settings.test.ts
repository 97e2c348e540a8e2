import { describe, expect, test } from 'vitest';
import { deviceSettings, readSettings } from './settings.ts';

describe('readSettings()', () => {
  test('takes what fits, and the start value for what does not', () => {
    const text = JSON.stringify({ name: 'Ada', unit: 'furlong', appearance: 'dark', isPlanShown: 'yes' });
    expect(readSettings(text, 'bench')).toEqual({
      name: 'Ada',
      device: 'bench',
      unit: 'mm',
      appearance: 'dark',
      language: 'as the device',
      isPlanShown: true,
      isPlanShownAboveReadings: false,
    });
  });

  test.each([null, '', 'null', '{', '[]', '7'])('starts fresh from %j', (text) => {
    expect(readSettings(text, 'bench')).toMatchObject({ name: '', device: 'bench', unit: 'mm' });
  });
});

test('a device starts with the unit of its country, until another was chosen', () => {
  expect(readSettings(null, 'bench', { unit: 'in' }).unit).toBe('in');
  expect(readSettings('{"unit":"mm"}', 'bench', { unit: 'in' }).unit).toBe('mm');
});

test('the device keeps its name from one visit to the next', () => {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  } as Storage;
  deviceSettings(storage, 'first').update({ unit: 'in' });
  expect(deviceSettings(storage, 'second').get()).toMatchObject({ device: 'first', unit: 'in' });
});
