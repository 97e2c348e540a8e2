import type { Entry, Ulid } from '@becket/journal';
import type { Cursor } from '@becket/store';

/** A job as the server lists it. */
export interface ServerJob {
  readonly job: Ulid;
  readonly title: string;
  readonly customer?: string | undefined;
  readonly entries: number;
  readonly lastAt: string;
  readonly isSealed: boolean;
}

/** What the exchange of photos needs of a server. */
export interface PhotoLink {
  /** Those of the digests that the server does not have. */
  missingPhotos(digests: readonly string[]): Promise<readonly string[]>;
  sendPhoto(digest: string, bytes: Uint8Array): Promise<void>;
  readPhoto(digest: string): Promise<Uint8Array>;
}

/** What the exchange needs of a server. */
export interface ServerLink extends PhotoLink {
  jobs(): Promise<readonly ServerJob[]>;
  send(job: Ulid, entries: readonly Entry[]): Promise<void>;
  readAfter(
    job: Ulid,
    cursor: Cursor | undefined,
  ): Promise<{ readonly entries: readonly Entry[]; readonly cursor: Cursor }>;
  /** Calls back whenever the server has new entries of the job. Gives back the way to stop. */
  listen(job: Ulid, onNews: () => void): () => void;
}

/** The server cannot be reached: nothing is wrong with what was sent, and it may be sent again. */
export class ServerAway extends Error {
  override readonly name = 'ServerAway';
  constructor(options?: ErrorOptions) {
    super(
      'Cannot reach the server. What you do is kept on this device and goes to the server when it is back.',
      options,
    );
  }
}

/** The server answered that it will not do what it was asked. */
export class ServerRefused extends Error {
  override readonly name = 'ServerRefused';
  readonly status: number;
  readonly code: string;
  constructor(status: number, code: string, message: string) {
    super(message);
    this.status = status;
    this.code = code;
  }
}

const waitAtMost = 20_000;
/** A photo takes its time on a slow network. */
const waitForPhotoAtMost = 120_000;

/** The server that this page came from, over HTTP. Throws ServerAway or ServerRefused. */
export function serverLink(base = ''): ServerLink {
  async function ask(path: string, init?: RequestInit, wait = waitAtMost): Promise<unknown> {
    let response: Response;
    try {
      response = await fetch(`${base}${path}`, {
        ...init,
        headers: { accept: 'application/json', ...init?.headers },
        signal: AbortSignal.timeout(wait),
      });
    } catch (cause) {
      throw new ServerAway({ cause });
    }
    const isJson = response.headers.get('content-type')?.includes('json') ?? false;
    // Something else may stand at this address while the server is away: a proxy's page, or plain files.
    if (!isJson) throw new ServerAway();
    const body: unknown = await response.json().catch((cause: unknown) => {
      throw new ServerAway({ cause });
    });
    if (response.ok) return body;
    if (response.status >= 500) throw new ServerAway();
    const { code = 'unknown', message = `The server answered ${response.status}.` } = body as {
      code?: string;
      message?: string;
    };
    throw new ServerRefused(response.status, code, message);
  }

  const entriesPath = (job: Ulid) => `/jobs/${encodeURIComponent(job)}/entries`;

  return {
    async jobs() {
      return ((await ask('/jobs')) as { jobs: ServerJob[] }).jobs;
    },
    async send(job, entries) {
      await ask(entriesPath(job), {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ entries }),
      });
    },
    async readAfter(job, cursor) {
      const after = cursor === undefined ? '' : `?after=${encodeURIComponent(cursor)}`;
      return (await ask(`${entriesPath(job)}${after}`)) as { entries: Entry[]; cursor: Cursor };
    },
    async missingPhotos(digests) {
      const answer = await ask('/blobs/missing', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ digests }),
      });
      return (answer as { missing: string[] }).missing;
    },
    async sendPhoto(digest, bytes) {
      const init = {
        method: 'PUT',
        headers: { 'content-type': 'image/jpeg' },
        body: bytes as Uint8Array<ArrayBuffer>,
      };
      await ask(`/blobs/${digest}`, init, waitForPhotoAtMost);
    },
    async readPhoto(digest) {
      try {
        const response = await fetch(`${base}/blobs/${digest}`, {
          signal: AbortSignal.timeout(waitForPhotoAtMost),
        });
        if (response.status === 404)
          throw new ServerRefused(
            404,
            'blob-not-found',
            'Cannot read this photo: the server does not have it.',
          );
        const isPicture = response.headers.get('content-type')?.startsWith('image/') ?? false;
        if (!response.ok || !isPicture) throw new ServerAway();
        return new Uint8Array(await response.arrayBuffer());
      } catch (cause) {
        if (cause instanceof ServerRefused || cause instanceof ServerAway) throw cause;
        throw new ServerAway({ cause });
      }
    },
    listen(job, onNews) {
      const source = new EventSource(`${base}/jobs/${encodeURIComponent(job)}/events`);
      source.onmessage = onNews;
      source.addEventListener('entries', onNews);
      source.onopen = onNews;
      return () => source.close();
    },
  };
}
