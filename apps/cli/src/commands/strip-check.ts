import type { Language } from '@becket/core';
import { stripCheck } from '@becket/journal';
import { acceptGaps, readJob, sealRecord } from '@becket/tasks';
import type { Command } from 'commander';
import { exitStatus } from '../exit-status.ts';
import { WrongUse } from '../refusals.ts';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface StripCheckOptions extends CommonOptions {
  readonly accept: readonly string[];
  readonly reason?: string;
  readonly seal?: boolean;
}

/** `becket strip-check`: what the record still lacks; accepts gaps, and seals it. */
export function registerStripCheck(program: Command, language: Language): void {
  const { say, moment } = language;
  program
    .command('strip-check')
    .description(
      say('name what the record still lacks before the strings come off; status 1 while a gap is open'),
    )
    .argument('<job>', say('id of the job'))
    .option(
      '--accept <gap>',
      say('accept a gap by its name; may be given again'),
      (gap: string, all: readonly string[]) => [...all, gap],
      [],
    )
    .option('--reason <words>', say('why the gaps are accepted'))
    .option('--seal', say('seal the record when the check is passed'))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<StripCheckOptions>();
      const { accept, reason } = options;
      if (accept.length > 0 && reason === undefined) {
        throw new WrongUse(say('Cannot accept a gap without a reason: give it with --reason.'));
      }
      await inWorkshop(options, language, async (context) => {
        if (accept.length > 0) await acceptGaps(context, job, { gaps: accept, reason: reason! });
        const state = options.seal ? await sealRecord(context, job) : await readJob(context, job);
        const check = stripCheck(state, language);
        const accepted = check.gaps.length - check.openGaps.length;
        talk.result(options, { ...check, seal: state.seal }, [
          check.isPassed
            ? say('Passed.')
            : say('Not passed: {gaps, plural, one {# gap is} other {# gaps are}} open.', {
                gaps: check.openGaps.length,
              }),
          ...(accepted > 0
            ? [
                say('{gaps, plural, one {# gap was} other {# gaps were}} accepted by name.', {
                  gaps: accepted,
                }),
              ]
            : []),
          ...check.openGaps.map(({ rank, name, sentence }) => `${say(rank)}: ${name}: ${sentence}`),
          ...(state.seal === undefined
            ? []
            : [
                say('Sealed on {moment} by {name}, digest {digest}.', {
                  moment: moment(state.seal.at),
                  name: state.seal.by,
                  digest: state.seal.digest,
                }),
              ]),
        ]);
        if (!check.isPassed) process.exitCode = exitStatus.no;
      });
    });
}
