import { inKilonewtons, inNewtons, noteName } from '@becket/core';
import { readJob, scaleAsFound } from '@becket/tasks';
import type { Command } from 'commander';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket scale`: tension, break share and inharmonicity of the scale as found. */
export function registerScale(program: Command): void {
  program
    .command('scale')
    .description('compute the scale as found: tension, break share, inharmonicity, loads')
    .argument('<job>', 'id of the job')
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const state = await inWorkshop(options, (context) => readJob(context, job));
      const { analysis, notComputed } = scaleAsFound(state);
      const rows = analysis.notes.map((note) => [
        noteName(note.key),
        note.note.section,
        String(note.note.strings),
        inNewtons(note.tension).toFixed(0),
        note.standardUncertainties === undefined ? '—' : note.standardUncertainties.tension.toFixed(0),
        (100 * note.breakShare).toFixed(1),
        note.inharmonicity.toExponential(2),
      ]);
      const first = analysis.notes[0];
      const data = {
        strengthTable: first?.strengthTable,
        strengthRemark: first?.strengthRemark,
        notes: analysis.notes.map((note) => ({
          key: note.key,
          note: noteName(note.key),
          section: note.note.section,
          bridge: note.note.bridge,
          strings: note.note.strings,
          tension_N: note.tension,
          unisonTension_N: note.unisonTension,
          breakLoad_N: note.breakLoad,
          breakShare: note.breakShare,
          inharmonicity: note.inharmonicity,
          inharmonicityMethod: note.inharmonicityMethod,
          standardUncertainties: note.standardUncertainties,
        })),
        sections: analysis.sections,
        bridges: analysis.bridges,
        total_N: analysis.total,
        totalStrings: analysis.totalStrings,
        notComputed: notComputed.map(({ note, missing, contradiction }) => ({
          note,
          missing,
          contradiction,
        })),
      };
      talk.result(options, data, [
        ...table(['note', 'section', 'strings', 'tension N', '± N', 'break share %', 'B'], rows),
        '',
        ...analysis.sections.map(
          ({ name, strings, load }) =>
            `section ${name}: ${strings} strings, ${inKilonewtons(load).toFixed(1)} kN`,
        ),
        ...analysis.bridges.map(
          ({ name, strings, load }) =>
            `bridge ${name}: ${strings} strings, ${inKilonewtons(load).toFixed(1)} kN`,
        ),
        `total: ${analysis.totalStrings} strings, ${inKilonewtons(analysis.total).toFixed(1)} kN`,
        ...(first === undefined ? [] : [`Break share by ${first.strengthTable}. ${first.strengthRemark}`]),
        ...notComputed.map(
          ({ note, missing, contradiction }) =>
            `not computed: ${note}: ${contradiction ?? (missing.length > 0 ? `${missing.join(', ')} missing` : 'not described how it is strung')}`,
        ),
      ]);
    });
}
