/*
 * Runs every `@example` of the docstrings below packages and fails when a value differs from the one stated.
 *
 *   node --import tsx tools/run-examples.ts
 *
 * An example is one expression, then `//`, then what comes out:
 *
 *   @example stringTension({ diameter: millimetres(1), … })  // ≈ 706 N for L = 0.4 m
 *   @example noteName(49)  // = A4
 *
 * `≈` states a number, and whatever follows it is a unit or a remark: the value must agree to half a unit of the last
 * digit that is written (706 means 705.5 to 706.5; 706.0 means 705.95 to 706.05; 1e-3 means 0.5e-3 to 1.5e-3).
 * `=` states the value itself: a number (with its unit behind it) to the rounding of the computer, a text without
 * quotation marks, true, false, undefined, or a list or object as JSON.
 *
 * The expression is plain JavaScript and may use every export of its own package and of its own file, and of
 * @becket/core. It may go over several lines; the answer stands at the end of the last one. An example in any other
 * form is an error, so that none is skipped.
 */
import { readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import ts from 'typescript';
import { filesBelow } from './files-below.ts';

const root = resolve(fileURLToPath(import.meta.url), '../..');

export interface Example {
  readonly line: number;
  readonly text: string;
}

/** The text of every `@example` tag, with the line it starts on. */
export function examplesIn(source: string): Example[] {
  const examples: Example[] = [];
  const comments = source.matchAll(/\/\*\*[\s\S]*?\*\//g);
  for (const comment of comments) {
    const firstLine = source.slice(0, comment.index).split('\n').length;
    const lines = comment[0]
      .replace(/\*\/$/, '')
      .split('\n')
      .map((line) => line.replace(/^\s*(\/\*)?\*+ ?/, ''));
    lines.forEach((line, index) => {
      const start = /^\s*@example\b(.*)$/.exec(line);
      if (start === null) return;
      const rest = lines.slice(index + 1);
      const end = rest.findIndex((next) => /^\s*@/.test(next) || next.trim() === '');
      const text = [start[1]!, ...(end === -1 ? rest : rest.slice(0, end))].join('\n').trim();
      examples.push({ line: firstLine + index, text });
    });
  }
  return examples;
}

export interface Parts {
  readonly expression: string;
  readonly sign: '≈' | '=';
  readonly answer: string;
}

/** Takes an example apart, or undefined when it is not in the form described above. */
export function partsOf(example: string): Parts | undefined {
  const parts = /^([\s\S]+?)\s*\/\/\s*([≈=])\s*(\S[^\n]*)$/.exec(example);
  if (parts === null) return undefined;
  return { expression: parts[1]!.trim(), sign: parts[2] as '≈' | '=', answer: parts[3]!.trim() };
}

const leadingNumber = /^[-−+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?(?=$|[\s,;%°])/i;

/** Why a value is not what was stated, or undefined when it is. */
export function difference(
  { sign, answer }: Pick<Parts, 'sign' | 'answer'>,
  value: unknown,
): string | undefined {
  const written = leadingNumber.exec(answer)?.[0];
  if (sign === '≈') {
    if (written === undefined) return `'≈' needs a number: found '${answer}'`;
    if (typeof value !== 'number') return `stated ${answer}, found ${show(value)}`;
    const stated = toNumber(written);
    const half = halfOfLastDigit(written);
    // The slack is the rounding of the comparison itself, for values that lie exactly on a half.
    const isClose = Math.abs(value - stated) <= half * (1 + 1e-9);
    return isClose ? undefined : `stated ${answer}, found ${value}`;
  }
  if (typeof value === 'number') {
    if (written === undefined)
      return answer === String(value) ? undefined : `stated ${answer}, found ${value}`;
    const stated = toNumber(written);
    const isSame = Math.abs(value - stated) <= 4 * Number.EPSILON * Math.abs(stated);
    return isSame ? undefined : `stated ${answer}, found ${value}`;
  }
  return show(value) === answer ? undefined : `stated ${answer}, found ${show(value)}`;
}

const toNumber = (written: string): number => Number(written.replace('−', '-'));

function halfOfLastDigit(written: string): number {
  const [digits, exponent = '0'] = written.toLowerCase().split('e');
  const decimals = digits!.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

const show = (value: unknown): string =>
  typeof value === 'string' ? value : value === undefined ? 'undefined' : JSON.stringify(value);

/** Value of an expression in which the names of `scope` can be used. */
export async function evaluate(
  expression: string,
  scope: Readonly<Record<string, unknown>>,
): Promise<unknown> {
  // Types are taken out, so that an example may say `!` or `as` where the reader's compiler would ask for it.
  const { outputText } = ts.transpileModule(`return (${expression}\n);`, {
    compilerOptions: { target: ts.ScriptTarget.ES2023, removeComments: true },
  });
  const names = Object.keys(scope).filter((name) => /^[A-Za-z_$][\w$]*$/.test(name) && name !== 'default');
  const run = new Function(...names, outputText);
  return await run(...names.map((name) => scope[name]));
}

async function main(): Promise<void> {
  const files = filesBelow(join(root, 'packages'), /\.ts$/).filter(
    (file) => !/\.test\.ts$|\/testing\//.test(file),
  );
  const core = (await import('@becket/core')) as Record<string, unknown>;
  let run = 0;
  const wrong: string[] = [];
  for (const file of files) {
    const examples = examplesIn(readFileSync(file, 'utf8'));
    if (examples.length === 0) continue;
    const workspace = relative(root, file).split('/').slice(0, 2).join('/');
    const own = await load(join(root, workspace, 'src/index.ts'));
    const scope = { ...core, ...own, ...(await load(file)) };
    for (const { line, text } of examples) {
      run++;
      const where = `${relative(root, file)}:${line}`;
      const parts = partsOf(text);
      if (parts === undefined) {
        wrong.push(
          `${where}: an example needs '// ≈ value unit' or '// = value' at its end: found '${text}'`,
        );
        continue;
      }
      try {
        const problem = difference(parts, await evaluate(parts.expression, scope));
        if (problem !== undefined) wrong.push(`${where}: ${problem}`);
      } catch (error) {
        wrong.push(`${where}: the example throws ${error instanceof Error ? error.message : String(error)}`);
      }
    }
  }
  for (const problem of wrong) console.error(problem);
  console.log(`examples: ${run} run, ${wrong.length} differ`);
  process.exit(wrong.length === 0 ? 0 : 1);
}

const load = async (file: string) => (await import(pathToFileURL(file).href)) as Record<string, unknown>;

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
