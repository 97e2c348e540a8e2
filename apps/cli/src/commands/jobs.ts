import { listJobs } from '@becket/tasks';
import type { Command } from 'commander';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket jobs`: lists the jobs of the store. */
export function registerJobs(program: Command): void {
  program
    .command('jobs')
    .description('list the jobs, the one last worked on first')
    .action(async (_: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const jobs = await inWorkshop(options, listJobs);
      const rows = jobs.map(({ job, title, entries, lastAt, isSealed }) => [
        job,
        title,
        String(entries),
        lastAt,
        isSealed ? 'sealed' : '',
      ]);
      talk.result(
        options,
        jobs,
        jobs.length === 0 ? ['No job yet.'] : table(['job', 'title', 'entries', 'last entry', ''], rows),
      );
    });
}
