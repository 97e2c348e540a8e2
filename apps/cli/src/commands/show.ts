import { inMillimetres, metres } from '@becket/core';
import { asFoundRecord, type Figure } from '@becket/journal';
import { readJob } from '@becket/tasks';
import type { Command } from 'commander';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket show`: the as-found record of a job, note by note. */
export function registerShow(program: Command): void {
  program
    .command('show')
    .description('show a job: the piano, its sections, and every note as found')
    .argument('<job>', 'id of the job')
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const state = await inWorkshop(options, (context) => readJob(context, job));
      const { notes } = asFoundRecord(state);
      const mm = (figure: Figure | undefined, digits: number) =>
        figure === undefined ? '—' : inMillimetres(metres(figure.value)).toFixed(digits);
      const rows = notes.map(({ note, section, strings, winding, figures, missing }) => [
        note,
        section?.section ?? '—',
        strings === undefined ? '—' : String(strings),
        winding ?? '—',
        mm(figures['wire-diameter'] ?? figures['core-diameter'], 3),
        mm(figures['over-all-diameter'], 2),
        mm(figures['speaking-length'], 1),
        String(Object.values(figures).reduce((sum, figure) => sum + figure.readings.length, 0)),
        missing.join(', '),
      ]);
      const data = {
        job: state.id,
        title: state.title,
        piano: state.piano,
        sections: state.sections,
        readings: state.readings.length,
        seal: state.seal,
        notes: notes.map(
          ({ key, note, section, strings, winding, layers, figures, absences, missing, contradiction }) => ({
            key,
            note,
            section: section?.section,
            strings,
            winding,
            layers,
            figures_si: Object.fromEntries(
              Object.entries(figures).map(([quantity, { value, standardUncertainty, origin, readings }]) => [
                quantity,
                { value, standardUncertainty, origin, readings: readings.length },
              ]),
            ),
            absences,
            missing,
            contradiction,
          }),
        ),
      };
      talk.result(options, data, [
        `${state.title}: ${state.readings.length} readings, ${state.seal === undefined ? 'not sealed' : `sealed on ${state.seal.at} by ${state.seal.by}`}`,
        '',
        ...table(
          [
            'note',
            'section',
            'strings',
            'winding',
            'wire mm',
            'over all mm',
            'length mm',
            'readings',
            'missing',
          ],
          rows,
        ),
      ]);
    });
}
