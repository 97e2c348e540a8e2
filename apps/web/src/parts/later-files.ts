import { observable } from './observable.ts';

/** A file of the program that is not needed to start it: type-setting, fonts, the reader of papers. */
export interface LaterFile {
  readonly url: string;
  readonly bytes: number;
}

export interface LaterFiles {
  /** 'not known' where the program is not kept on the device at all. */
  readonly is: 'not known' | 'coming' | 'here';
  readonly missing_bytes: number;
}

/** How far the rest of the program has come. */
export const laterFiles = observable<LaterFiles>({ is: 'not known', missing_bytes: 0 });

/** The list of these files, which the build writes; the service worker keeps that of its own version. */
export const laterList = 'kept-later.json';
/** Where the service worker looks for them: as in vite.config.ts. */
export const laterCache = 'kept-later';

/** What a cache and a network are to whoever fills the one from the other: a test hands in its own. */
export interface Means {
  readonly cache: Pick<Cache, 'match' | 'put' | 'keys' | 'delete'>;
  readonly fetch: (url: string) => Promise<Response>;
}

/**
 * Fetches what is missing, one file after the other, so that the line stays free for entries; what is there is left alone.
 * Throws: whatever the network or the cache throws; what came before stays.
 */
export async function bringLaterFiles(
  list: readonly LaterFile[],
  { cache, fetch }: Means,
  onStep: (step: LaterFiles) => void = () => {},
): Promise<void> {
  const missing = [];
  for (const file of list) if ((await cache.match(file.url)) === undefined) missing.push(file);
  let missing_bytes = missing.reduce((sum, { bytes }) => sum + bytes, 0);
  onStep({ is: missing.length === 0 ? 'here' : 'coming', missing_bytes });
  for (const [index, { url, bytes }] of missing.entries()) {
    const response = await fetch(url);
    if (!response.ok) throw new Error(`${url} was answered with ${response.status}`);
    await cache.put(url, response);
    missing_bytes -= bytes;
    onStep({ is: index === missing.length - 1 ? 'here' : 'coming', missing_bytes });
  }
}

/** Takes out what no list names: files of versions that are gone. */
export async function clearLaterFiles(lists: readonly LaterFile[], cache: Means['cache']): Promise<void> {
  const wanted = new Set(lists.map(({ url }) => url));
  for (const { url } of await cache.keys())
    if (![...wanted].some((one) => new URL(url).pathname.endsWith(`/${one}`))) await cache.delete(url);
}

const firstWait_ms = 15_000;
const longestWait_ms = 300_000;

/**
 * Brings the rest of the program onto the device once the part that records is there, and tries again while it cannot.
 * Files of a newer version that lies ready come too, before anybody starts it.
 */
export function keepLaterFiles(): { readonly newerIsReady: () => void } {
  let isBusy = false;
  let isNewer = false;
  let wait_ms = firstWait_ms;
  let again: ReturnType<typeof setTimeout> | undefined;

  async function bring(): Promise<void> {
    if (isBusy) return;
    isBusy = true;
    clearTimeout(again);
    try {
      const means = {
        cache: await caches.open(laterCache),
        fetch: (url: string) => fetch(url, { priority: 'low' }),
      };
      const own = await listAt(laterList);
      await bringLaterFiles(own, means, (step) => laterFiles.set(step));
      // An address with a question is asked of the server: its list is that of the newer version.
      const newer = isNewer ? await listAt(`${laterList}?newest`) : [];
      await bringLaterFiles(newer, means);
      await clearLaterFiles([...own, ...newer], means.cache);
      wait_ms = firstWait_ms;
    } catch {
      // Without a network there is nothing to say: the sign tells what is missing.
      again = setTimeout(() => void bring(), wait_ms);
      wait_ms = Math.min(longestWait_ms, 2 * wait_ms);
    } finally {
      isBusy = false;
    }
  }
  addEventListener('online', () => void bring());
  void navigator.serviceWorker.ready.then(bring);
  return {
    newerIsReady: () => {
      isNewer = true;
      void bring();
    },
  };
}

async function listAt(url: string): Promise<LaterFile[]> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} was answered with ${response.status}`);
  return response.json();
}
