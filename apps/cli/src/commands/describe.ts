import { describeJob } from '@becket/tasks';
import type { Command } from 'commander';
import { jsonFrom } from '../json-file.ts';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket describe`: the piano, its sections, how its notes are strung and what was seen, from a file. */
export function registerDescribe(program: Command): void {
  program
    .command('describe')
    .description('describe the piano from a JSON file: what it is, its sections, its unisons, what was seen')
    .argument('<job>', 'id of the job')
    .argument('<file>', 'the description; examples/grand/job.json is one')
    .action(async (job: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const description = await jsonFrom(file);
      const { piano, sections, unisons, observations } = await inWorkshop(options, (context) =>
        describeJob(context, job, description),
      );
      talk.result(
        options,
        { job, piano, sections: sections.length, notes: unisons.size, observations: observations.length },
        [
          `Described: ${sections.length} sections, the stringing of ${unisons.size} notes, ${observations.length} things seen.`,
        ],
      );
    });
}
