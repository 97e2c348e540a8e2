import type { Language } from '@becket/core';
import { describeJob } from '@becket/tasks';
import type { Command } from 'commander';
import { jsonFrom } from '../json-file.ts';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket describe`: the piano, its sections, how its notes are strung and what was seen, from a file. */
export function registerDescribe(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('describe')
    .description(
      say('describe the piano from a JSON file: what it is, its sections, its unisons, what was seen'),
    )
    .argument('<job>', say('id of the job'))
    .argument('<file>', say('the description; examples/grand/job.json is one'))
    .action(async (job: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const description = await jsonFrom(file, language);
      const { piano, sections, unisons, observations } = await inWorkshop(options, language, (context) =>
        describeJob(context, job, description),
      );
      talk.result(
        options,
        { job, piano, sections: sections.length, notes: unisons.size, observations: observations.length },
        [
          say('Described: {sections} sections, the stringing of {notes} notes, {things} things seen.', {
            sections: sections.length,
            notes: unisons.size,
            things: observations.length,
          }),
        ],
      );
    });
}
