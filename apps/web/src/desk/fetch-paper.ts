import type { Ulid } from '@becket/journal';
import type { PaperFormat, PaperName } from '@becket/tasks';
import type { LengthUnit } from '../parts/length-text.ts';
import type { Exchange } from '../store/exchange.ts';

export interface PaperWish {
  readonly paper: PaperName;
  readonly format: PaperFormat;
  readonly size: 'A4' | 'Letter';
  readonly units: LengthUnit;
}

export interface FetchedPaper {
  readonly content: Blob;
  readonly fileName: string;
}

/**
 * A paper from the server, made of everything this device knows: what has not left it goes out first.
 * Throws: an Error with one sentence when the server is away, has not got everything, or refuses.
 */
export async function fetchPaper(exchange: Exchange, job: Ulid, wish: PaperWish): Promise<FetchedPaper> {
  await exchange.round();
  const { server, unsentByJob } = exchange.state.get();
  const unsent = unsentByJob.get(job) ?? 0;
  if (server !== 'here' || unsent > 0) {
    throw new Error(
      `Cannot make this paper now: the server makes it, and it ${unsent > 0 ? `lacks ${unsent} entries of this device` : 'cannot be reached'}. Nothing is lost; try again when the sign above says that all is sent.`,
    );
  }
  const { paper, ...query } = wish;
  const address = `/jobs/${encodeURIComponent(job)}/papers/${paper}?${new URLSearchParams(query)}`;
  let response: Response;
  try {
    response = await fetch(address);
  } catch (cause) {
    throw new Error('Cannot make this paper now: the server cannot be reached. Try again when it is back.', {
      cause,
    });
  }
  if (!response.ok) {
    const { message } = (await response.json().catch(() => ({}))) as { message?: string };
    throw new Error(message ?? `Cannot make this paper: the server answered ${response.status}. Try again.`);
  }
  const named = /filename="([^"]+)"/.exec(response.headers.get('content-disposition') ?? '')?.[1];
  return { content: await response.blob(), fileName: named ?? `${paper}.${wish.format}` };
}
