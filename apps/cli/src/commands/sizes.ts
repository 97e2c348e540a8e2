import { inMicrometres, inMillimetres } from '@becket/core';
import { inferredWireSizes, readJob, type WireLatticeName, wireLatticeNames } from '@becket/tasks';
import { type Command, Option } from 'commander';
import { exitStatus } from '../exit-status.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface SizesOptions extends CommonOptions {
  readonly numbering?: WireLatticeName;
}

/** `becket sizes`: the wire sizes that worn readings speak for, with odds. */
export function registerSizes(program: Command): void {
  program
    .command('sizes')
    .description(
      'tell the wire sizes that the readings speak for, with odds, and which string to measure next',
    )
    .argument('<job>', 'id of the job')
    .addOption(
      new Option('--numbering <numbering>', 'the way of numbering, when you know it').choices(
        wireLatticeNames,
      ),
    )
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<SizesOptions>();
      const state = await inWorkshop(options, (context) => readJob(context, job));
      const sizes = inferredWireSizes(state, { lattice: options.numbering });
      if (sizes === undefined) {
        talk.say(
          'No size can be told yet: describe which notes are plain, and read or bring in at least one wire.',
        );
        talk.result(options, null, []);
        process.exitCode = exitStatus.no;
        return;
      }
      const {
        lattice,
        latticeOdds,
        notes,
        bias,
        scatter,
        next,
        shiftDoubt,
        stampsNotUsed,
        notesExpectedWrong,
      } = sizes;
      const rows = notes.map(({ note, readings, size, diameter, odds, otherwise, isDoubtful }) => [
        note,
        readings.map(({ value_si }) => (value_si * 1000).toFixed(3)).join(' '),
        size,
        inMillimetres(diameter).toFixed(3),
        `${(100 * odds).toFixed(0)} %`,
        otherwise === undefined ? '' : `${otherwise.size} ${(100 * otherwise.odds).toFixed(0)} %`,
        isDoubtful ? 'doubtful' : '',
      ]);
      const um = (value: typeof bias.value) => inMicrometres(value).toFixed(1);
      talk.result(
        options,
        { ...sizes, notes: notes.map(({ readings, ...note }) => ({ ...note, readings: readings.length })) },
        [
          ...table(['note', 'readings mm', 'size', 'new mm', 'odds', 'or else', ''], rows),
          '',
          `numbering: ${lattice} (${Object.entries(latticeOdds)
            .map(([name, odds]) => `${name} ${(100 * (odds ?? 0)).toFixed(0)} %`)
            .join(', ')})`,
          `wear and zero: ${um(bias.value)} µm (95 %: ${um(bias.low)} to ${um(bias.high)} µm); scatter ${um(scatter.value)} µm`,
          `notes expected wrong: ${notesExpectedWrong.toFixed(1)}`,
          ...(shiftDoubt === undefined ? [] : [shiftDoubt]),
          ...stampsNotUsed,
          ...(next === undefined ? [] : [next.sentence]),
        ],
      );
    });
}
