import { type Language, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import { shortened } from '../figures/shortened.ts';
import type { Box, RunningLines } from '../page-tree.ts';
import type { PaperOptions } from './paper-options.ts';

/** As many letters of a digest as a person can compare: 12 of 64 leave a chance of one in 2.8 · 10¹⁴ for a mix-up. */
const digestLetters = 12;
export const shortDigest = (digest: string): string => digest.slice(0, digestLetters);

/** Head and foot of every page, one line each, and the way back to the job; the title and the name stand in full on the first page. */
export function runningLines(
  job: Job,
  origin: string,
  { at, address, isSealIntact, language }: PaperOptions,
): RunningLines {
  return {
    job: shortened(sayKnown(job.title, language), 50),
    date: language.day(at),
    seal: sealLine(job, isSealIntact, language),
    origin,
    pageOf: language.say('page {page} of {pages}', { page: '{page}', pages: '{pages}' }),
    ...(address === undefined ? {} : { code: { address, text: language.say('The job behind this paper:') } }),
  };
}

function sealLine(
  { seal, amendments }: Job,
  isSealIntact: boolean | undefined,
  { say, day }: Language,
): string {
  if (seal === undefined) return say('As-found record not sealed: it may still change.');
  const sentences = [
    say('As-found record sealed {day} by {name}, digest {digest}.', {
      day: day(seal.at),
      name: shortened(seal.by, 40),
      digest: shortDigest(seal.digest),
    }),
  ];
  if (amendments.length > 0)
    sentences.push(say('{count} amended since.', { count: String(amendments.length) }));
  if (isSealIntact === false) sentences.push(say('THE SEAL DOES NOT MATCH.'));
  return sentences.join(' ');
}

/** The state of the seal, set apart on a first page. */
export function sealBox(
  { seal, amendments, acceptedGaps }: Job,
  isSealIntact: boolean | undefined,
  { say, moment, plain }: Language,
): Box {
  if (seal === undefined) {
    return {
      is: 'box',
      tone: 'seal',
      title: say('Not sealed'),
      texts: [
        say('This record is not sealed. It may still change, and the strings should not come off yet.'),
      ],
    };
  }
  const checked =
    isSealIntact === undefined
      ? say('The entries under the seal were not checked when this paper was made.')
      : isSealIntact
        ? say('The entries under the seal were checked when this paper was made: all are here and unchanged.')
        : say(
            'CAREFUL: when this paper was made, the entries under the seal did not match it. Compare with an older copy.',
          );
  return {
    is: 'box',
    tone: 'seal',
    title: say('Sealed on {moment}, by {name}', { moment: moment(seal.at), name: seal.by }),
    texts: [
      say(
        'The seal covers {count, plural, one {{entries} entry} other {{entries} entries}}; {gaps, plural, one {# gap was} other {# gaps were}} accepted by name; {amendments, plural, =0 {nothing was amended since} one {# amendment since} other {# amendments since}}.',
        {
          count: seal.entries,
          entries: plain(seal.entries),
          gaps: acceptedGaps.length,
          amendments: amendments.length,
        },
      ),
      checked,
      say('Digest (SHA-256): {digest}', { digest: seal.digest }),
    ],
  };
}
