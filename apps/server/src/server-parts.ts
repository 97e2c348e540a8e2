import type { Ulid } from '@becket/journal';
import type { JournalStore } from '@becket/store';
import type { TaskContext } from '@becket/tasks';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { EntryNews } from './live/entry-news.ts';

/** What the server is made of: everything that it does not make itself is handed in. */
export interface ServerParts {
  readonly store: JournalStore;
  readonly now: () => Date;
  readonly newId: () => Ulid;
}

/** What a group of routes gets to work with. */
export interface RouteParts extends ServerParts {
  readonly app: OpenAPIHono;
  readonly news: EntryNews;
}

/** What a task is handed when a request runs it. Tasks that only read do not care who asks. */
export function taskContext(
  { store, now, newId }: ServerParts,
  { by = 'nobody', device = 'server' }: { by?: string; device?: string | undefined } = {},
): TaskContext {
  return { store, now, newId, by, device };
}
