import type { Ulid } from '@becket/journal';
import { hashOf } from './route.ts';

/** The address at which this program opens a job, on any device that can reach it. */
export function jobAddress(job: Ulid, here: Pick<Location, 'origin' | 'pathname'>): string {
  return `${here.origin}${here.pathname}${hashOf({ place: 'job', job, task: 'record' })}`;
}

/**
 * Whether an address means the computer itself and nothing else, so that no other device can follow it.
 * Source: RFC 6761 (2013), section 6.3; RFC 5735 (2010), section 3; RFC 4291 (2006), section 2.5.3.
 */
export function isForThisComputerAlone(hostname: string): boolean {
  return /(^|\.)localhost$|^127\.\d+\.\d+\.\d+$|^\[?::1\]?$/.test(hostname);
}
