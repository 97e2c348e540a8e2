import { fileURLToPath } from 'node:url';
import { newUlid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { databaseFileIn, openSqliteStore } from '@becket/store/sqlite';
import { appraiseDemoJob, openDemoJob } from '@becket/tasks';
import type { Configuration } from './configuration.ts';
import { requireLoopback } from './guards/loopback.ts';
import type { ServerParts } from './server-parts.ts';
import { type RunningServer, startServer } from './start-server.ts';

const builtScreens = fileURLToPath(new URL('../../web/dist', import.meta.url));

/**
 * Opens the store in a data folder and serves it, until it is stopped; then the store is closed as well.
 * Throws: AccountsNeeded, CannotListen, StoreUnavailable.
 */
export async function serveDataFolder({
  host,
  port,
  dataFolder,
  withDemo,
}: Configuration): Promise<RunningServer> {
  // Before the data folder is touched.
  requireLoopback(host);
  const store = await openSqliteStore(databaseFileIn(dataFolder));
  try {
    const now = () => new Date();
    const newId = () => newUlid(now(), chance);
    if (withDemo && (await store.jobs()).length === 0) await putDemoIn({ store, now, newId });
    const server = await startServer({ host, port, store, now, newId, webRoot: builtScreens });
    return {
      url: server.url,
      stop: async () => {
        await server.stop();
        await store.close();
      },
    };
  } catch (error) {
    await store.close();
    throw error;
  }
}

/** The invented piano is made beside the store and then put in whole, so that no part of it can be left behind. */
async function putDemoIn({ store, now, newId }: ServerParts): Promise<void> {
  const beside = createMemoryStore();
  const context = { store: beside, now, newId, by: 'Becket', device: 'server' };
  const { id } = await openDemoJob(context);
  await appraiseDemoJob(context, id);
  await store.append((await beside.entries(id)).entries);
}

/** A number from 0 up to 1 that nobody can guess. */
function chance(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0]! / 2 ** 32;
}
