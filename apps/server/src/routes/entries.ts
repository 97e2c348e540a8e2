import { type EntriesPage, limits } from '@becket/contract';
import { addEntriesRoute, readEntriesRoute } from '@becket/contract/routes';
import { type Entry, parseEntry } from '@becket/journal';
import { Refused } from '../answer-error.ts';
import { atMost } from '../guards/size.ts';
import type { RouteParts } from '../server-parts.ts';

export function entryRoutes({ app, store, news }: RouteParts): void {
  app.openapi(readEntriesRoute, async (c) => {
    const { entries, cursor } = await store.entries(c.req.valid('param').job, c.req.valid('query').after);
    return c.json({ entries: entries as EntriesPage['entries'], cursor }, 200);
  });

  app.use(
    '/jobs/:job/entries',
    atMost(limits.entriesBytes, {
      what: 'this batch of entries',
      instead: 'Send it in several parts; nothing of it was added.',
    }),
  );
  app.openapi(addEntriesRoute, async (c) => {
    const { job } = c.req.valid('param');
    const { entries: found } = c.req.valid('json');
    if (found.length > limits.entriesInBatch) {
      throw new Refused(
        'too-large',
        `Cannot take this batch: at most ${limits.entriesInBatch} entries are taken at once, ${found.length} came. Send it in several parts; nothing of it was added.`,
        { limit: limits.entriesInBatch, unit: 'entries' },
      );
    }
    const entries: Entry[] = [];
    for (const [index, one] of found.entries()) {
      let entry: Entry;
      try {
        entry = parseEntry(one);
      } catch (error) {
        throw new Refused(
          'entry-not-understood',
          `Entry ${index + 1} of ${found.length} is not as it must be: ${(error as Error).message}. Nothing of the batch was added.`,
          { index },
        );
      }
      if (entry.job !== job) {
        throw new Refused(
          'entry-of-another-job',
          `Entry ${index + 1} of ${found.length} belongs to job ${entry.job} and was sent to job ${job}. Send it to its own; nothing of the batch was added.`,
          { index },
        );
      }
      entries.push(entry);
    }
    const result = await store.append(entries);
    if (result.added > 0) news.announce(job);
    return c.json(result, 200);
  });
}
