import type { Ulid } from '@becket/journal';
import type { ListedJob } from '@becket/tasks';
import type { ServerJob } from '../store/server-link.ts';

/** A job as the start place lists it, and where it is kept. */
export interface JobLine {
  readonly job: Ulid;
  readonly title: string;
  readonly customer: string | undefined;
  readonly entries: number;
  readonly lastAt: string;
  readonly isSealed: boolean;
  readonly isHere: boolean;
  readonly isOnServer: boolean;
}

/** The jobs of this device and of the server, each once, the one last worked on first. */
export function jobLines(here: readonly ListedJob[], onServer: readonly ServerJob[]): JobLine[] {
  const lines = new Map<Ulid, JobLine>();
  for (const { job, title, customer, entries, lastAt, isSealed } of onServer)
    lines.set(job, { job, title, customer, entries, lastAt, isSealed, isHere: false, isOnServer: true });
  for (const { job, title, customer, entries, lastAt, isSealed } of here) {
    const isOnServer = lines.has(job);
    lines.set(job, { job, title, customer, entries, lastAt, isSealed, isHere: true, isOnServer });
  }
  return [...lines.values()].sort((a, b) => (a.lastAt < b.lastAt ? 1 : -1));
}
