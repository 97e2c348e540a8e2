import { type Language, parseNote } from '@becket/core';
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
export function registerNew(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('new')
    .description(say('open a job'))
    .argument('<title>', say('what the job is called'))
    .addOption(new Option('--form <form>', say('what the piano is')).choices(['grand', 'vertical']))
    .option('--compass <notes>', say('lowest and highest note'), 'A0-C8')
    .option('--pitch <hertz>', say('the pitch the strings are meant for, A4'), '440')
    .option('--customer <name>', say('whose piano it is'))
    .option('--maker <name>', say('who made the piano'))
    .action(async (title: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<NewOptions>();
      const [first = '', last = ''] = options.compass.split(/\s*[-–]\s*/);
      const compass = { firstKey: parseNote(first, {}, language), lastKey: parseNote(last, {}, language) };
      if (compass.firstKey >= compass.lastKey) {
        throw new WrongUse(
          say(
            "Cannot open a job with the compass '{compass}': the lowest note has to come first, as in A0-C8.",
            { compass: options.compass },
          ),
        );
      }
      const { form, customer, maker } = options;
      const job = await inWorkshop(
        options,
        language,
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
                    referencePitch_hz: pitchIn(options.pitch, language),
                    ...(maker === undefined ? {} : { maker }),
                  },
          }),
        { mayBegin: true },
      );
      talk.result(options, { job: job.id, title: job.title }, [job.id]);
      if (form === undefined)
        talk.tell(
          say(
            'The piano is not described yet: do so with becket describe, or on the screen; next time with --form.',
          ),
        );
    });
}

function pitchIn(text: string, { say }: Language): number {
  const pitch = Number(text.replace(',', '.'));
  if (pitch >= 380 && pitch <= 480) return pitch;
  throw new WrongUse(
    say("Cannot open a job at this pitch: 380 to 480 Hz for A4 is needed, '{text}' was found.", { text }),
  );
}
