/*
 * Writes docs/reference/compute.md from the schemas of `becket compute`.
 *
 *   node --import tsx tools/write-compute-reference.ts
 *
 * A test fails when the page is not what the schemas say now.
 */
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ComputeKind, computeErrorMeanings, computeKinds, computeLine } from '@becket/tasks/compute';
import * as z from 'zod';

export const computeReferenceFile = resolve(
  fileURLToPath(import.meta.url),
  '../../docs/reference/compute.md',
);

/** What a JSON Schema says of one key, as far as the page shows it. */
interface Property {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly description?: string;
  readonly items?: ObjectSchema & Property;
  readonly anyOf?: readonly Property[];
}
interface ObjectSchema {
  readonly properties?: Readonly<Record<string, Property>>;
  readonly required?: readonly string[];
}

const introduction = `# \`becket compute\`

Calculations for scripts: one request a line in, one answer a line out, in the same order, each a JSON object (JSON Lines).

\`\`\`sh
echo '{"kind":"plain","speaking_length_m":0.62,"diameter_m":0.001,"f0_Hz":261.6256}' | becket compute
becket compute requests.jsonl > answers.jsonl
becket compute --workers 2 requests.jsonl > answers.jsonl
\`\`\`

- SI throughout, with the unit at the end of each key: \`_m\` metres, \`_N\` newtons, \`_Hz\` hertz, \`_kg_per_m\` kilograms per metre, \`_Pa\` pascals, \`_N_m2\` newton square metres, \`_N_m\` newton metres, \`_rad\` radians, \`_cents\` cents, \`_K\` kelvins. A key without a unit is a pure number or a word.
- An \`id\` of any kind in a request comes back with its answer or its error.
- Keys that a kind does not know are not used; the answer names them in \`unused_keys\`.
- Blank lines are passed over. \`--workers n\` shares the lines among n threads; the order stays.
- Figures are given to all their digits. How many deserve print is said with each equation, in [the explanations](../explanation/README.md).

## Errors

A line that cannot be answered gets \`{"error":{"code","message"}}\`, and the next line is answered as if nothing had happened.

| code | meaning |
| --- | --- |
${Object.entries(computeErrorMeanings)
  .map(([code, meaning]) => `| \`${code}\` | ${meaning} |`)
  .join('\n')}

Exit status: 0 all lines answered; 1 some lines answered with an error; 2 the command line was not understood; 4 there is no such file.
`;

/** The whole page. */
export function computeReference(): string {
  return `${introduction}\n## Kinds\n\n${computeKinds.map((kind) => `- [\`${kind.kind}\`](#${kind.kind}): ${firstLower(kind.summary)}`).join('\n')}\n\n${computeKinds.map(sectionOf).join('\n')}`;
}

function sectionOf(kind: ComputeKind): string {
  const request = z.toJSONSchema(kind.request, { io: 'input' });
  const answer = z.toJSONSchema(kind.answer);
  const lines = [
    `## ${kind.kind}`,
    '',
    kind.summary,
    '',
    ...kind.notes.map((note) => `- ${note}`),
    ...(kind.notes.length > 0 ? [''] : []),
    '| request | | meaning |',
    '| --- | --- | --- |',
    ...rowsOf(request as ObjectSchema, true),
    '',
    '| answer | meaning |',
    '| --- | --- |',
    ...rowsOf(answer as ObjectSchema, false),
    '',
    'A request, and its answer with figures rounded here to six digits:',
    '',
    '```json',
    JSON.stringify(kind.example),
    rounded(computeLine(JSON.stringify(kind.example)).text),
    '```',
    '',
    '<details><summary>JSON Schemas</summary>',
    '',
    '```json',
    JSON.stringify({ request, answer }, undefined, 1),
    '```',
    '',
    '</details>',
    '',
  ];
  return lines.join('\n');
}

function rowsOf(schema: ObjectSchema, isRequest: boolean, prefix = ''): string[] {
  const required = new Set(schema.required ?? []);
  return Object.entries(schema.properties ?? {}).flatMap(([key, property]) => {
    const name = `\`${prefix}${key}${property.type === 'array' ? '[]' : ''}\``;
    const need = isRequest ? ` ${required.has(key) ? 'needed' : 'optional'} |` : '';
    const row = `| ${name} |${need} ${meaningOf(property)} |`;
    const inner =
      property.items?.properties === undefined ? [] : rowsOf(property.items, isRequest, `${prefix}${key}[].`);
    return [row, ...inner];
  });
}

function meaningOf(property: Property): string {
  const words = property.description ?? '';
  if (property.const !== undefined) return `\`${JSON.stringify(property.const)}\``;
  const choices = (property.enum ?? []).map((value) => `\`${JSON.stringify(value)}\``).join(' or ');
  const orNull = property.anyOf?.some(({ type }) => type === 'null') ? ', or null' : '';
  return [choices, `${words}${orNull}`].filter((part) => part !== '').join(': ');
}

const rounded = (json: string): string =>
  JSON.stringify(
    JSON.parse(json, (_, value) => (typeof value === 'number' ? Number(value.toPrecision(6)) : value)),
  );

const firstLower = (sentence: string): string => `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(computeReferenceFile, computeReference());
