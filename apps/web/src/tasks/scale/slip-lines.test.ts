import { asFoundRecord } from '@becket/journal';
import { openDemoJob } from '@becket/tasks';
import { expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import { slipLines } from './slip-lines.ts';

it('tells of slips what the law of the string says: T goes with L² and d²', async () => {
  const { scaleNotes: notes } = asFoundRecord(await openDemoJob(testContext()));
  const note = notes.find(({ string }) => string.kind === 'plain')!;
  const [length, wire, ...more] = slipLines(note, 'ASTM A228 minimum');
  expect(more).toEqual([]);
  expect(length!.change).toMatch(/speaking length/);
  // 0.5 mm of about a metre is 0.05 %, so T moves by about 0.1 % and the share with it.
  const tension = Number(/[\d.]+/.exec(length!.tension)![0]);
  expect(tension).toBeGreaterThan(0.2);
  expect(tension).toBeLessThan(3);
  expect(Number(/[\d.]+/.exec(wire!.tension)![0])).toBeGreaterThan(tension);
  expect(length!.tension).toMatch(/ N$/);
  expect(slipLines(note, 'ASTM A228 minimum', 'in')[0]!.tension).toMatch(/ lbf$/);
});
