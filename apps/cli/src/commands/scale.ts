import {
  COMMON_SHOP_POLICY,
  inKilonewtons,
  inNewtons,
  noteName,
  PUBLISHED_STRENGTH_TABLES,
  type ScaleLimitName,
  type ShopPolicy,
  scaleFindings,
  strengthTableNamed,
  withLimit,
} from '@becket/core';
import { readJob, scaleAsFound } from '@becket/tasks';
import type { Command } from 'commander';
import { z } from 'zod';
import { jsonFrom } from '../json-file.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface ScaleOptions extends CommonOptions {
  readonly limits?: string;
  readonly strength: string;
}

const limitsSchema = z.record(z.string(), z.object({ value: z.number(), source: z.string() }));

/** `becket scale`: tension, break share and inharmonicity of the scale as found. */
export function registerScale(program: Command): void {
  program
    .command('scale')
    .description('compute the scale as found: tension, break share, inharmonicity, loads')
    .argument('<job>', 'id of the job')
    .option(
      '--limits <file>',
      "JSON: the shop's own limits, { name: { value, source } }; common practice without it",
    )
    .option(
      '--strength <table>',
      `where wire strength comes from: ${PUBLISHED_STRENGTH_TABLES.map(({ name }) => `'${name}'`).join(', ')}`,
      'ASTM A228 minimum',
    )
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<ScaleOptions>();
      const state = await inWorkshop(options, (context) => readJob(context, job));
      const { analysis, notComputed } = scaleAsFound(state, {
        strengthTable: strengthTableNamed(options.strength),
      });
      const findings = scaleFindings(analysis, await policyFrom(options.limits));
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
        findings,
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
        ...findings
          .filter(({ weight }) => weight === 'beyond a limit')
          .map(
            ({ sentence, isClear }) =>
              `${sentence}${isClear ? '' : ' (too near its limit to be sure: measure again)'}`,
          ),
        ...notComputed.map(
          ({ note, missing, contradiction }) =>
            `not computed: ${note}: ${contradiction ?? (missing.length > 0 ? `${missing.join(', ')} missing` : 'not described how it is strung')}`,
        ),
      ]);
    });
}

/** The shop's policy: common practice, with the limits of the file in place of its own. */
async function policyFrom(path: string | undefined): Promise<ShopPolicy> {
  if (path === undefined) return COMMON_SHOP_POLICY;
  const read = limitsSchema.safeParse(await jsonFrom(path));
  const names = Object.keys(COMMON_SHOP_POLICY.limits).join(', ');
  if (!read.success) {
    throw new SyntaxError(
      `Cannot use the limits in ${path}: { name: { value, source } } is needed for names of ${names}.`,
    );
  }
  let policy = COMMON_SHOP_POLICY;
  for (const [name, { value, source }] of Object.entries(read.data)) {
    if (!(name in policy.limits)) {
      throw new RangeError(`Cannot use the limit '${name}' in ${path}: a name of ${names} is needed.`);
    }
    policy = withLimit(policy, name as ScaleLimitName, value, source);
  }
  return policy;
}
