import {
  COMMON_SHOP_POLICY,
  inKilonewtons,
  inNewtons,
  type Language,
  type Newtons,
  noteName,
  PUBLISHED_STRENGTH_TABLES,
  type ScaleLimitName,
  type ShopPolicy,
  sayKnown,
  scaleFindings,
  strengthTableNamed,
  withLimit,
} from '@becket/core';
import { type ReadingQuantityName, readingQuantities } from '@becket/journal';
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
export function registerScale(program: Command, language: Language): void {
  const { say, fixed } = language;
  const kn = (load: Newtons) => fixed(inKilonewtons(load), 1);
  const exponent = (value: number) => {
    const [figures, power] = value.toExponential(2).split('e');
    return `${fixed(Number(figures), 2)}e${power}`;
  };
  const quantityNames = (missing: readonly ReadingQuantityName[]) =>
    missing.map((one) => say(readingQuantities[one].label)).join(', ');
  program
    .command('scale')
    .description(say('compute the scale as found: tension, break share, inharmonicity, loads'))
    .argument('<job>', say('id of the job'))
    .option(
      '--limits <file>',
      say("JSON: the shop's own limits, {shape}; common practice without it", {
        shape: '{ name: { value, source } }',
      }),
    )
    .option(
      '--strength <table>',
      say('where wire strength comes from: {tables}', {
        tables: PUBLISHED_STRENGTH_TABLES.map(({ name }) => `'${name}'`).join(', '),
      }),
      'ASTM A228 minimum',
    )
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<ScaleOptions>();
      const state = await inWorkshop(options, language, (context) => readJob(context, job));
      const { analysis, notComputed } = scaleAsFound(state, {
        strengthTable: strengthTableNamed(options.strength),
      });
      const findings = scaleFindings(analysis, await policyFrom(options.limits, language), language);
      const rows = analysis.notes.map((note) => [
        noteName(note.key),
        note.note.section,
        String(note.note.strings),
        fixed(inNewtons(note.tension), 0),
        note.standardUncertainties === undefined ? '—' : fixed(note.standardUncertainties.tension, 0),
        fixed(100 * note.breakShare, 1),
        exponent(note.inharmonicity),
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
        ...table(
          [say('note'), say('section'), say('strings'), say('tension N'), '± N', say('break share %'), 'B'],
          rows,
        ),
        '',
        ...analysis.sections.map(({ name, strings, load }) =>
          say('section {name}: {strings} strings, {load} kN', { name, strings, load: kn(load) }),
        ),
        ...analysis.bridges.map(({ name, strings, load }) =>
          say('bridge {name}: {strings} strings, {load} kN', { name, strings, load: kn(load) }),
        ),
        say('total: {strings} strings, {load} kN', {
          strings: analysis.totalStrings,
          load: kn(analysis.total),
        }),
        ...(first === undefined
          ? []
          : [
              say('Break share by {table}. {remark}', {
                table: sayKnown(first.strengthTable, language),
                remark: sayKnown(first.strengthRemark, language),
              }),
            ]),
        ...findings
          .filter(({ weight }) => weight === 'beyond a limit')
          .map(({ sentence, isClear }) =>
            isClear
              ? sentence
              : say('{sentence} (too near its limit to be sure: measure again)', { sentence }),
          ),
        ...notComputed.map(({ note, missing, contradiction }) =>
          say('not computed: {note}: {problem}', {
            note,
            problem:
              contradiction ??
              (missing.length > 0
                ? say('{quantities} missing', { quantities: quantityNames(missing) })
                : say('not described how it is strung')),
          }),
        ),
      ]);
    });
}

/** The shop's policy: common practice, with the limits of the file in place of its own. */
async function policyFrom(path: string | undefined, language: Language): Promise<ShopPolicy> {
  if (path === undefined) return COMMON_SHOP_POLICY;
  const { say } = language;
  const read = limitsSchema.safeParse(await jsonFrom(path, language));
  const names = Object.keys(COMMON_SHOP_POLICY.limits).join(', ');
  if (!read.success) {
    throw new SyntaxError(
      say('Cannot use the limits in {path}: {shape} is needed for names of {names}.', {
        path,
        shape: '{ name: { value, source } }',
        names,
      }),
    );
  }
  let policy = COMMON_SHOP_POLICY;
  for (const [name, { value, source }] of Object.entries(read.data)) {
    if (!(name in policy.limits)) {
      throw new RangeError(
        say("Cannot use the limit '{name}' in {path}: a name of {names} is needed.", { name, path, names }),
      );
    }
    policy = withLimit(policy, name as ScaleLimitName, value, source);
  }
  return policy;
}
