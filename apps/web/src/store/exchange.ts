import type { Ulid } from '@becket/journal';
import { isKnownFact, parseEntry } from '@becket/journal';
import { type Observable, observable } from '../parts/observable.ts';
import type { BrowserStore } from './browser-store.ts';
import { photoExchange } from './photo-exchange.ts';
import { ServerAway, type ServerJob, type ServerLink, ServerRefused } from './server-link.ts';

/** How this device stands with the server. */
export interface ExchangeState {
  readonly server: 'not asked yet' | 'here' | 'away';
  /** Entries that have not left this device. */
  readonly unsent: number;
  readonly unsentByJob: ReadonlyMap<Ulid, number>;
  /** When the last exchange went through, RFC 3339. */
  readonly lastAt: string | undefined;
  /** What the server refused, or this device could not take in, in one sentence. */
  readonly problem: string | undefined;
  /** The jobs the server told of. */
  readonly serverJobs: readonly ServerJob[];
}

export interface Exchange {
  readonly state: Observable<ExchangeState>;
  /** Starts a round soon; several wishes make one round. */
  wake(): void;
  /** One round, now: sends what has not left, reads what is new. Resolves when it is over, well or not. */
  round(): Promise<void>;
  /** Reads one job of the server onto this device. Throws ServerAway or ServerRefused. */
  bring(job: Ulid): Promise<void>;
  /** Listens for news of this job instead of the one before. */
  watch(job: Ulid | undefined): void;
  stop(): void;
}

interface Parts {
  readonly store: BrowserStore;
  readonly link: ServerLink;
  readonly now: () => Date;
  /** Runs one round at a time on this device, whatever the tab. */
  readonly oneAtATime?: (round: () => Promise<void>) => Promise<void>;
}

const batchSize = 400;
/** The server's routes refuse bodies that are too large; a batch of readings stays far below. */
const restBetweenRounds = 30_000;
const restAfterArrival = 50;
const firstWait = 2_000;
const longestWait = 60_000;

/**
 * Exchanges entries with the server: an entry is kept here first, and goes out when it can.
 *
 * A server that is away only delays this: waits grow from 2 s to 60 s, and any sign of life starts a round at once.
 */
export function startExchange({ store, link, now, oneAtATime = (round) => round() }: Parts): Exchange {
  const state = observable<ExchangeState>({
    server: 'not asked yet',
    unsent: 0,
    unsentByJob: new Map(),
    lastAt: undefined,
    problem: undefined,
    serverJobs: [],
  });
  const photos = photoExchange(store, link);
  let wait = firstWait;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let counting: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | undefined;
  let isWanted = false;
  let isStopped = false;
  let arrivals = 0;
  let stopListening: (() => void) | undefined;

  async function count(): Promise<void> {
    const before = arrivals;
    const unsentByJob = await store.unsentCounts();
    // What was kept meanwhile is not in it, and is counted soon: nobody is told until then that all is sent.
    if (arrivals !== before) return;
    let unsent = 0;
    for (const number of unsentByJob.values()) unsent += number;
    state.update({ unsent, unsentByJob });
  }

  /** Sends entries, but not those of photos that are `held` back: an entry counts as sent only with its photo. */
  async function push(job: Ulid, held: ReadonlySet<string>): Promise<void> {
    for (;;) {
      const unsent = await store.unsent(job, batchSize);
      const batch = unsent.filter(
        ({ fact }) => !(isKnownFact(fact) && fact.kind === 'photo' && held.has(fact.digest)),
      );
      if (batch.length === 0) return;
      await link.send(job, batch);
      await store.markSent(
        job,
        batch.map(({ id }) => id),
      );
      await count();
      if (unsent.length < batchSize) return;
    }
  }

  async function pull(job: Ulid): Promise<void> {
    let cursor = await store.serverCursor(job);
    for (;;) {
      let page: Awaited<ReturnType<ServerLink['readAfter']>>;
      try {
        page = await link.readAfter(job, cursor);
      } catch (error) {
        if (!(error instanceof ServerRefused && error.code === 'cursor-not-known')) throw error;
        await store.forgetServer(job);
        photos.forgetServer();
        const { held } = await photos.send((await store.entries(job)).entries);
        await push(job, held);
        cursor = undefined;
        continue;
      }
      // What comes from outside is read once, here; after this it is trusted.
      const entries = page.entries.map((entry) => parseEntry(entry));
      if (entries.length > 0 || page.cursor !== cursor) await store.takeIn(job, entries, page.cursor);
      if (entries.length === 0 || page.cursor === cursor) return;
      cursor = page.cursor;
    }
  }

  async function exchangeAll(): Promise<void> {
    const serverJobs = await link.jobs();
    state.update({ serverJobs, server: 'here' });
    const onServer = new Map(serverJobs.map((listed) => [listed.job, listed]));
    let problem: string | undefined;
    for (const { job, entries } of await store.jobs()) {
      try {
        const sentHere = (state.get().unsentByJob.get(job) ?? 0) > 0;
        const sent = await photos.send((await store.entries(job)).entries);
        await push(job, sent.held);
        // A job that is on both sides alike needs no reading: that keeps a round of many jobs small.
        if (sentHere || onServer.get(job)?.entries !== entries) await pull(job);
        const notKept = await photos.bring((await store.entries(job)).entries);
        problem ??= sent.problem ?? notKept;
      } catch (error) {
        if (error instanceof ServerAway) throw error;
        // One job that the server refuses, or that cannot be taken in here, must not hold up the others.
        problem = error instanceof Error ? error.message : String(error);
      }
    }
    state.update({ problem });
  }

  async function once(): Promise<void> {
    try {
      await count();
      await oneAtATime(exchangeAll);
      await count();
      wait = firstWait;
      state.update({ server: 'here', lastAt: now().toISOString() });
      rest(restBetweenRounds);
    } catch (error) {
      const isAway = error instanceof ServerAway;
      state.update({
        server: isAway ? 'away' : state.get().server,
        problem: isAway ? undefined : error instanceof Error ? error.message : String(error),
      });
      rest(wait);
      wait = Math.min(wait * 2, longestWait);
    }
  }

  function schedule(delay: number): void {
    if (isStopped) return;
    clearTimeout(timer);
    timer = setTimeout(() => void round(), delay);
  }

  /** The next round of its own accord: one that was wished for during this round comes sooner, and is left to come. */
  function rest(delay: number): void {
    if (timer === undefined) schedule(delay);
  }

  function round(): Promise<void> {
    if (running) {
      isWanted = true;
      return running;
    }
    // This round is the one that was waited for.
    clearTimeout(timer);
    timer = undefined;
    running = once().finally(() => {
      running = undefined;
      if (isWanted && !isStopped) {
        isWanted = false;
        // What was wished for during a round that failed waits for the next one.
        if (state.get().server === 'here') schedule(0);
      }
    });
    return running;
  }

  const stopArrivals = store.onArrival((job, made) => {
    // Nobody is told that all is sent beside a value that was kept just now.
    if (made > 0) {
      arrivals += 1;
      const { unsent, unsentByJob } = state.get();
      const ofJob = (unsentByJob.get(job) ?? 0) + made;
      state.update({ unsent: unsent + made, unsentByJob: new Map(unsentByJob).set(job, ofJob) });
    }
    // What was typed is shown as kept first: to count and to send take the same processor and the same database.
    clearTimeout(counting);
    counting = setTimeout(() => void count(), restAfterArrival);
    if (state.get().server !== 'away') schedule(restAfterArrival);
  });

  return {
    state,
    wake: () => {
      wait = firstWait;
      schedule(0);
    },
    round,
    async bring(job) {
      await pull(job);
      await photos.bring((await store.entries(job)).entries);
      await count();
    },
    watch(job) {
      stopListening?.();
      stopListening = job === undefined ? undefined : link.listen(job, () => schedule(0));
    },
    stop() {
      isStopped = true;
      clearTimeout(timer);
      clearTimeout(counting);
      stopArrivals();
      stopListening?.();
    },
  };
}
