import { parseNote } from '@becket/core';
import { openJob } from '@becket/tasks';
import { type Command, Option } from 'commander';
import { WrongUse } from '../refusals.ts';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface NewOptions extends CommonOptions {
  readonly form?: 'grand' | 'vertical';
  readonly compass: string;
  readonly pitch: string;
  readonly customer?: string;
  readonly maker?: string;
}

/** `becket new`: opens a job. */
export function registerNew(program: Command): void {
  program
    .command('new')
    .description('open a job')
    .argument('<title>', 'what the job is called')
    .addOption(new Option('--form <form>', 'what the piano is').choices(['grand', 'vertical']))
    .option('--compass <notes>', 'lowest and highest note', 'A0-C8')
    .option('--pitch <hertz>', 'the pitch the strings are meant for, A4', '440')
    .option('--customer <name>', 'whose piano it is')
    .option('--maker <name>', 'who made the piano')
    .action(async (title: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<NewOptions>();
      const [first = '', last = ''] = options.compass.split(/\s*[-–]\s*/);
      const compass = { firstKey: parseNote(first), lastKey: parseNote(last) };
      if (compass.firstKey >= compass.lastKey) {
        throw new WrongUse(
          `Cannot open a job with the compass '${options.compass}': the lowest note has to come first, as in A0-C8.`,
        );
      }
      const { form, customer, maker } = options;
      const job = await inWorkshop(
        options,
        (context) =>
          openJob(context, {
            title,
            customer,
            piano:
              form === undefined
                ? undefined
                : {
                    form,
                    ...compass,
                    referencePitch_hz: pitchIn(options.pitch),
                    ...(maker === undefined ? {} : { maker }),
                  },
          }),
        { mayBegin: true },
      );
      talk.result(options, { job: job.id, title: job.title }, [job.id]);
      if (form === undefined)
        talk.say(
          'The piano is not described yet: do so with becket describe, or on the screen; next time with --form.',
        );
    });
}

function pitchIn(text: string): number {
  const pitch = Number(text);
  if (pitch >= 380 && pitch <= 480) return pitch;
  throw new WrongUse(`Cannot open a job at this pitch: 380 to 480 Hz for A4 is needed, '${text}' was found.`);
}
