import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hashOf, type Route, readRoute, taskNames } from './route.ts';

const anyRoute: fc.Arbitrary<Route> = fc.oneof(
  fc.constant<Route>({ place: 'jobs' }),
  fc.constant<Route>({ place: 'settings' }),
  fc.record({
    place: fc.constant('job' as const),
    job: fc.string({ minLength: 1 }),
    task: fc.constantFrom(...taskNames),
  }),
  fc.record({
    place: fc.constant('job' as const),
    job: fc.string({ minLength: 1 }),
    task: fc.constantFrom(...taskNames),
    part: fc.string({ minLength: 1 }),
  }),
);

describe('readRoute()', () => {
  test('finds the place again that an address was made for', () => {
    fc.assert(
      fc.property(anyRoute, (route) => {
        expect(readRoute(hashOf(route))).toEqual(route);
      }),
    );
  });

  test('an address that names no place is nowhere, and not the first place', () => {
    expect(readRoute('#/job/01J/polish')).toEqual({ place: 'nowhere', hash: '#/job/01J/polish' });
    expect(readRoute('#/%E0%A4%A')).toMatchObject({ place: 'nowhere' });
  });

  test('a job without a task opens at Record', () => {
    expect(readRoute('#/job/01J')).toEqual({ place: 'job', job: '01J', task: 'record' });
  });
});
