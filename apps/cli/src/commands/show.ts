import { inMillimetres, type Language, metres } from '@becket/core';
import { asFoundRecord, type Figure, readingQuantities } from '@becket/journal';
import { readJob } from '@becket/tasks';
import type { Command } from 'commander';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket show`: the as-found record of a job, note by note. */
export function registerShow(program: Command, language: Language): void {
  const { say, fixed, moment, plain } = language;
  program
    .command('show')
    .description(say('show a job: the piano, its sections, and every note as found'))
    .argument('<job>', say('id of the job'))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const state = await inWorkshop(options, language, (context) => readJob(context, job));
      const { notes } = asFoundRecord(state);
      const mm = (figure: Figure | undefined, digits: number) =>
        figure === undefined ? '—' : fixed(inMillimetres(metres(figure.value)), digits);
      const rows = notes.map(({ note, section, strings, winding, figures, missing }) => [
        note,
        section?.section ?? '—',
        strings === undefined ? '—' : String(strings),
        winding === undefined ? '—' : say(winding),
        mm(figures['wire-diameter'] ?? figures['core-diameter'], 3),
        mm(figures['over-all-diameter'], 2),
        mm(figures['speaking-length'], 1),
        String(Object.values(figures).reduce((sum, figure) => sum + figure.readings.length, 0)),
        missing.map((one) => say(readingQuantities[one].label)).join(', '),
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
        say('{title}: {readings} readings, {seal}', {
          title: state.title,
          readings: plain(state.readings.length),
          seal:
            state.seal === undefined
              ? say('not sealed')
              : say('sealed on {moment} by {name}', { moment: moment(state.seal.at), name: state.seal.by }),
        }),
        '',
        ...table(
          [
            say('note'),
            say('section'),
            say('strings'),
            say('winding'),
            say('wire mm'),
            say('over all mm'),
            say('length mm'),
            say('readings'),
            say('missing'),
          ],
          rows,
        ),
      ]);
    });
}
