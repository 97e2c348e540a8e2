import { inMicrometres, inMillimetres, type Language } from '@becket/core';
import { inferredWireSizes, readJob, type WireLatticeName, wireLatticeNames } from '@becket/tasks';
import { type Command, Option } from 'commander';
import { exitStatus } from '../exit-status.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface SizesOptions extends CommonOptions {
  readonly numbering?: WireLatticeName;
}

/** `becket sizes`: the wire sizes that worn readings speak for, with odds. */
export function registerSizes(program: Command, language: Language): void {
  const { say, fixed } = language;
  const percent = (share: number) => `${fixed(100 * share, 0)} %`;
  program
    .command('sizes')
    .description(
      say('tell the wire sizes that the readings speak for, with odds, and which string to measure next'),
    )
    .argument('<job>', say('id of the job'))
    .addOption(
      new Option('--numbering <numbering>', say('the way of numbering, when you know it')).choices(
        wireLatticeNames,
      ),
    )
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<SizesOptions>();
      const state = await inWorkshop(options, language, (context) => readJob(context, job));
      const sizes = inferredWireSizes(state, { lattice: options.numbering, language });
      if (sizes === undefined) {
        talk.tell(
          say(
            'No size can be told yet: describe which notes are plain, and read or bring in at least one wire.',
          ),
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
        readings.map(({ value_si }) => fixed(value_si * 1000, 3)).join(' '),
        size,
        fixed(inMillimetres(diameter), 3),
        percent(odds),
        otherwise === undefined ? '' : `${otherwise.size} ${percent(otherwise.odds)}`,
        isDoubtful ? say('doubtful') : '',
      ]);
      const um = (value: typeof bias.value) => fixed(inMicrometres(value), 1);
      talk.result(
        options,
        { ...sizes, notes: notes.map(({ readings, ...note }) => ({ ...note, readings: readings.length })) },
        [
          ...table(
            [say('note'), say('readings mm'), say('size'), say('new mm'), say('odds'), say('or else'), ''],
            rows,
          ),
          '',
          say('numbering: {lattice} ({odds})', {
            lattice: say(lattice),
            odds: wireLatticeNames
              .flatMap((name) =>
                latticeOdds[name] === undefined ? [] : [`${say(name)} ${percent(latticeOdds[name])}`],
              )
              .join(', '),
          }),
          say('wear and zero: {bias} µm (95 %: {low} to {high} µm); scatter {scatter} µm', {
            bias: um(bias.value),
            low: um(bias.low),
            high: um(bias.high),
            scatter: um(scatter.value),
          }),
          say('notes expected wrong: {notes}', { notes: fixed(notesExpectedWrong, 1) }),
          ...(shiftDoubt === undefined ? [] : [shiftDoubt]),
          ...stampsNotUsed,
          ...(next === undefined ? [] : [next.sentence]),
        ],
      );
    });
}
