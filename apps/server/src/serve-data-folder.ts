import { fileURLToPath } from 'node:url';
import { newUlid } from '@becket/journal';
import { databaseFileIn, openSqliteStore } from '@becket/store/sqlite';
import type { Configuration } from './configuration.ts';
import { requireLoopback } from './guards/loopback.ts';
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
    if (withDemo && (await store.jobs()).length === 0) {
      // DEMO
    }
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

/** A number from 0 up to 1 that nobody can guess. */
function chance(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0]! / 2 ** 32;
}
