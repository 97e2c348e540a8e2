import { digestOf, type Entry } from '@becket/journal';
import { type JournalStore, StoreUnavailable } from '@becket/store';
import { photosNamed } from '@becket/tasks';
import { type PhotoLink, ServerRefused } from './server-link.ts';

export interface PhotoExchange {
  /**
   * Sends the photos these entries name, as far as they are here and the server does not have them. Gives back the
   * digests of those the server refused, whose entries must wait, and its sentence. Throws ServerAway.
   */
  send(entries: readonly Entry[]): Promise<{ readonly held: ReadonlySet<string>; readonly problem?: string }>;
  /** Reads the photos these entries name that are on the server and not here; a sentence when one cannot be kept. */
  bring(entries: readonly Entry[]): Promise<string | undefined>;
  /** The server is another one, or was put back to an older copy: what it had is asked again. */
  forgetServer(): void;
}

/** Exchanges photos with the server: always before the entries that name them, so that no entry there lacks its photo. */
export function photoExchange(store: JournalStore, link: PhotoLink): PhotoExchange {
  const onServer = new Set<string>();

  async function askServer(digests: readonly string[]): Promise<ReadonlySet<string>> {
    const missing = new Set(await link.missingPhotos(digests));
    for (const digest of digests) if (!missing.has(digest)) onServer.add(digest);
    return missing;
  }

  return {
    async send(entries) {
      const held = new Set<string>();
      let problem: string | undefined;
      const unsure = digestsIn(entries).filter((digest) => !onServer.has(digest));
      const elsewhere = new Set(await store.blobs.missing(unsure));
      const here = unsure.filter((digest) => !elsewhere.has(digest));
      if (here.length === 0) return { held };
      for (const digest of await askServer(here)) {
        try {
          const bytes = await store.blobs.get(digest);
          if (bytes === undefined) continue;
          await link.sendPhoto(digest, bytes);
          onServer.add(digest);
        } catch (error) {
          // A photo that is damaged here, or refused there, must not hold up the rest.
          if (!(error instanceof ServerRefused || error instanceof StoreUnavailable)) throw error;
          problem = error.message;
          if (error instanceof ServerRefused) held.add(digest);
        }
      }
      return { held, ...(problem === undefined ? {} : { problem }) };
    },

    async bring(entries) {
      const wanted = await store.blobs.missing(digestsIn(entries));
      if (wanted.length === 0) return undefined;
      const absent = await askServer(wanted);
      for (const digest of wanted) {
        if (absent.has(digest)) continue;
        try {
          const bytes = await link.readPhoto(digest);
          // Cut off or changed on the way: the next round asks again.
          if (digestOf(bytes) === digest) await store.blobs.put(bytes);
        } catch (error) {
          if (!(error instanceof ServerRefused || error instanceof StoreUnavailable)) throw error;
          return error.message;
        }
      }
      return undefined;
    },

    forgetServer: () => onServer.clear(),
  };
}

const digestsIn = (entries: readonly Entry[]): string[] => [
  ...new Set(photosNamed(entries).map(({ digest }) => digest)),
];
