import type { Language } from '@becket/core';
import { appraiseDemoJob, openDemoJob, settleDemoJob } from '@becket/tasks';
import type { Command } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket demo`: opens a job of an invented piano to try things on. */
export function registerDemo(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('demo')
    .description(
      say('open a job of an invented grand, with its readings and a visit to it, to try things on'),
    )
    .option('--settled', say('with new wire, torque and passes as well, ready to be handed over'))
    .action(async (_: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions & { settled?: true }>();
      const job = await inWorkshop(
        options,
        language,
        async (context) => {
          const opened = await openDemoJob(context);
          await appraiseDemoJob(context, opened.id);
          if (options.settled === true) await settleDemoJob(context, opened.id);
          return opened;
        },
        { mayBegin: true },
      );
      talk.result(options, { job: job.id, title: job.title }, [job.id]);
    });
}
