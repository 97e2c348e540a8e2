import type { Job } from '@becket/journal';
import { dayInWords, timeInWords } from '../figures/dates.ts';
import { shortened } from '../figures/shortened.ts';
import type { Box, RunningLines } from '../page-tree.ts';
import type { PaperOptions } from './paper-options.ts';

/** As many letters of a digest as a person can compare: 12 of 64 leave a chance of one in 2.8 · 10¹⁴ for a mix-up. */
const digestLetters = 12;
export const shortDigest = (digest: string): string => digest.slice(0, digestLetters);

/** Head and foot of every page, one line each; the title and the name stand in full on the first page. */
export function runningLines(job: Job, origin: string, { at, isSealIntact }: PaperOptions): RunningLines {
  return { job: shortened(job.title, 50), date: dayInWords(at), seal: sealLine(job, isSealIntact), origin };
}

function sealLine({ seal, amendments }: Job, isSealIntact: boolean | undefined): string {
  if (seal === undefined) return 'As-found record not sealed: it may still change.';
  const broken = isSealIntact === false ? ' THE SEAL DOES NOT MATCH.' : '';
  const later = amendments.length === 0 ? '' : ` ${amendments.length} amended since.`;
  return `As-found record sealed ${dayInWords(seal.at)} by ${shortened(seal.by, 40)}, digest ${shortDigest(seal.digest)}.${later}${broken}`;
}

/** The state of the seal, set apart on a first page. */
export function sealBox({ seal, amendments, acceptedGaps }: Job, isSealIntact: boolean | undefined): Box {
  if (seal === undefined) {
    return {
      is: 'box',
      tone: 'seal',
      title: 'Not sealed',
      texts: ['This record is not sealed. It may still change, and the strings should not come off yet.'],
    };
  }
  const checked =
    isSealIntact === undefined
      ? 'The entries under the seal were not checked when this paper was made.'
      : isSealIntact
        ? 'The entries under the seal were checked when this paper was made: all are here and unchanged.'
        : 'CAREFUL: when this paper was made, the entries under the seal did not match it. Compare with an older copy.';
  return {
    is: 'box',
    tone: 'seal',
    title: `Sealed on ${timeInWords(seal.at)}, by ${seal.by}`,
    texts: [
      `The seal covers ${counted(seal.entries, 'entry', 'entries')}; ${counted(acceptedGaps.length, 'gap was', 'gaps were')} accepted by name; ${amendments.length === 0 ? 'nothing was amended since' : `${counted(amendments.length, 'amendment', 'amendments')} since`}.`,
      checked,
      `Digest (SHA-256): ${seal.digest}`,
    ],
  };
}

/** '1 note', '3 notes', 'no notes' is for the caller to say: zero is written 0. */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
