import type { Language } from '@becket/core';
import { listJobs } from '@becket/tasks';
import type { Command } from 'commander';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket jobs`: lists the jobs of the store. */
export function registerJobs(program: Command, language: Language): void {
  const { say, moment } = language;
  program
    .command('jobs')
    .description(say('list the jobs, the one last worked on first'))
    .action(async (_: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const jobs = await inWorkshop(options, language, listJobs);
      const rows = jobs.map(({ job, title, entries, lastAt, isSealed }) => [
        job,
        title,
        String(entries),
        moment(lastAt),
        isSealed ? say('sealed') : '',
      ]);
      talk.result(
        options,
        jobs,
        jobs.length === 0
          ? [say('No job yet.')]
          : table([say('job'), say('title'), say('entries'), say('last entry'), ''], rows),
      );
    });
}
