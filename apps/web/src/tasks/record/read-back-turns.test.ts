import { expect, test } from 'vitest';
import { observable } from '../../parts/observable.ts';
import { readBackTurns } from './read-back-turns.ts';
import { newRecordView, type ReadBack, type RecordView, type Step } from './record-state.ts';

const readBack = (is: ReadBack['is'], title: string): ReadBack => ({
  is,
  title,
  value: '1.025 mm',
  alsoAs: undefined,
});
const stepOf = (title: string): Step => ({ title, entries: [] });

function turns() {
  const view = observable<RecordView>(newRecordView());
  return { view, begin: readBackTurns(view), shown: () => view.get().readBack };
}

test('a value is shown at once as being kept, then as kept', () => {
  const { begin, shown, view } = turns();
  const outcome = begin(readBack('being kept', 'A4'));
  expect(shown()?.is).toBe('being kept');
  expect(view.get().steps).toEqual([]);
  outcome({ readBack: readBack('saved', 'A4'), step: stepOf('A4') });
  expect(shown()?.is).toBe('saved');
  expect(view.get().steps).toEqual([stepOf('A4')]);
});

test('a value that is kept behind a later one does not take its place, and can be taken back all the same', () => {
  const { begin, shown, view } = turns();
  const first = begin(readBack('being kept', 'A4'));
  const second = begin(readBack('being kept', 'A#4'));
  first({ readBack: readBack('saved', 'A4'), step: stepOf('A4') });
  expect(shown()).toEqual(readBack('being kept', 'A#4'));
  second({ readBack: readBack('saved', 'A#4'), step: stepOf('A#4') });
  expect(shown()).toEqual(readBack('saved', 'A#4'));
  expect(view.get().steps.map(({ title }) => title)).toEqual(['A4', 'A#4']);
});

test('a refusal is shown also when a later value is being kept', () => {
  const { begin, shown } = turns();
  const first = begin(readBack('being kept', 'A4'));
  begin(readBack('being kept', 'A#4'));
  first({ readBack: readBack('not saved', 'A4'), step: undefined });
  expect(shown()).toEqual(readBack('not saved', 'A4'));
});

test('where there was nothing to do nothing is left that says it is being kept', () => {
  const { begin, shown } = turns();
  begin(readBack('being kept', 'A4'))(undefined);
  expect(shown()).toBeUndefined();
  begin(undefined)({ readBack: readBack('taken back', 'A4'), step: undefined });
  begin(undefined)(undefined);
  expect(shown()?.is).toBe('taken back');
});
