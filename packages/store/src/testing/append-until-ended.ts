/*
 * A program for tests: opens a store and adds batches of 1 to 5 entries to it until it is killed or an append fails.
 * It ends by itself when whoever started it is gone.
 * Says 'open', then the number of entries acknowledged so far after every batch, then the sentence of the failure.
 */
import { openFilesStore } from '../files/index.ts';
import { openSqliteStore } from '../sqlite/index.ts';
import { wireEntries } from './journal-samples.ts';

const [kind, place = '', firstText = '0'] = process.argv.slice(2);
process.stdin.on('end', () => process.exit(1)).resume();
process.stdin.unref();
process.stdout.on('error', () => process.exit(1));
const say = (line: unknown) => process.stdout.write(`${JSON.stringify(line)}\n`);

try {
  const store = kind === 'files' ? await openFilesStore(place) : await openSqliteStore(place);
  say('open');
  let next = Number(firstText);
  for (let batch = 1; batch <= 20_000; batch += 1) {
    const entries = wireEntries(1 + (batch % 5), { first: next });
    await store.append(entries);
    next += entries.length;
    say(next);
  }
} catch (error) {
  const { name, message } = error as Error;
  say({ name, message });
}
