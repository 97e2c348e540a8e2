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
export function registerStripCheck(program: Command): void {
  program
    .command('strip-check')
    .description('name what the record still lacks before the strings come off; status 1 while a gap is open')
    .argument('<job>', 'id of the job')
    .option(
      '--accept <gap>',
      'accept a gap by its name; may be given again',
      (gap: string, all: readonly string[]) => [...all, gap],
      [],
    )
    .option('--reason <words>', 'why the gaps are accepted')
    .option('--seal', 'seal the record when the check is passed')
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<StripCheckOptions>();
      const { accept, reason } = options;
      if (accept.length > 0 && reason === undefined) {
        throw new WrongUse('Cannot accept a gap without a reason: give it with --reason.');
      }
      await inWorkshop(options, async (context) => {
        if (accept.length > 0) await acceptGaps(context, job, { gaps: accept, reason: reason! });
        const state = options.seal ? await sealRecord(context, job) : await readJob(context, job);
        const check = stripCheck(state);
        const accepted = check.gaps.length - check.openGaps.length;
        talk.result(options, { ...check, seal: state.seal }, [
          check.isPassed ? 'Passed.' : `Not passed: ${check.openGaps.length} gaps are open.`,
          ...(accepted > 0 ? [`${accepted} gaps were accepted by name.`] : []),
          ...check.openGaps.map(({ rank, name, sentence }) => `${rank}: ${name}: ${sentence}`),
          ...(state.seal === undefined
            ? []
            : [`Sealed on ${state.seal.at} by ${state.seal.by}, digest ${state.seal.digest}.`]),
        ]);
        if (!check.isPassed) process.exitCode = exitStatus.no;
      });
    });
}
