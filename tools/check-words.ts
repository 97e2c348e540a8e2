/*
 * Reads every message the program can say, and prints what its German catalogues lack, contradict or keep for nothing.
 *
 *   node --import tsx tools/check-words.ts                     everything; fails when anything is wrong
 *   node --import tsx tools/check-words.ts apps/web/src/shell  what is missing below one folder, ready to be filled in
 *
 * A message is the first argument of `say`, `sayNodes` or `message`; where it is no literal the compiler tells which
 * literals it can be. Catalogues are the files named german.ts, beside the code they belong to.
 */
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { withApostrophes } from '@becket/core';
import type { MessageFormatElement } from '@formatjs/icu-messageformat-parser';
import { parse, TYPE } from '@formatjs/icu-messageformat-parser';
import ts from 'typescript';
import { filesBelow } from './files-below.ts';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..');
const sayers = new Set(['say', 'sayNodes', 'message']);
const isCode = /(?<!\.(test|e2e|d))\.tsx?$/;

/** Which folders speak German, and the catalogue each of their messages must be in. */
const spoken = [
  { folder: 'packages', catalogue: 'packages/tasks/src/german.ts' },
  { folder: 'apps/web/src', catalogue: 'apps/web/src/words/german.ts' },
  { folder: 'apps/cli/src', catalogue: 'apps/cli/src/german.ts' },
] as const;

export interface SaidMessage {
  readonly file: string;
  readonly line: number;
  /** Undefined where the argument is not literal and its type names no literal either. */
  readonly text: string | undefined;
}

/** Every message of these files of a program. */
export function messagesOf(program: ts.Program, files: readonly string[]): SaidMessage[] {
  const checker = program.getTypeChecker();
  const found: SaidMessage[] = [];
  for (const file of files) {
    const source = program.getSourceFile(file);
    if (source === undefined) continue;
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node) && sayers.has(nameOf(node.expression)) && node.arguments[0]) {
        const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
        for (const text of textsOf(node.arguments[0], checker)) found.push({ file, line, text });
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}

function nameOf(callee: ts.Expression): string {
  if (ts.isIdentifier(callee)) return callee.text;
  return ts.isPropertyAccessExpression(callee) ? callee.name.text : '';
}

function textsOf(argument: ts.Expression, checker: ts.TypeChecker): (string | undefined)[] {
  if (ts.isStringLiteral(argument) || ts.isNoSubstitutionTemplateLiteral(argument)) return [argument.text];
  if (ts.isParenthesizedExpression(argument)) return textsOf(argument.expression, checker);
  if (ts.isConditionalExpression(argument))
    return [...textsOf(argument.whenTrue, checker), ...textsOf(argument.whenFalse, checker)];
  if (ts.isBinaryExpression(argument) && argument.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken)
    return [...textsOf(argument.left, checker), ...textsOf(argument.right, checker)];
  return literalsOf(checker.getTypeAtLocation(argument), checker);
}

/** The literals of a type. A marked message was met where it was marked. */
function literalsOf(type: ts.Type, checker: ts.TypeChecker): (string | undefined)[] {
  if (type.isUnion()) return type.types.flatMap((one) => literalsOf(one, checker));
  if (type.isStringLiteral()) return [type.value];
  if (type.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null | ts.TypeFlags.Never)) return [];
  const limit = checker.getBaseConstraintOfType(type);
  if (limit !== undefined && limit !== type) return literalsOf(limit, checker);
  const isMarked =
    type.isIntersection() && type.getProperties().some(({ name }) => name.includes('__message'));
  return isMarked ? [] : [undefined];
}

/** Names in the braces of a message. Throws SyntaxError when it is not ICU MessageFormat. */
export function namesIn(text: string): Set<string> {
  const names = new Set<string>();
  const visit = (elements: readonly MessageFormatElement[]): void => {
    for (const element of elements) {
      if (element.type === TYPE.literal || element.type === TYPE.pound) continue;
      if (element.type === TYPE.tag) visit(element.children);
      else names.add(element.value);
      if (element.type === TYPE.select || element.type === TYPE.plural)
        for (const { value } of Object.values(element.options)) visit(value);
    }
  };
  visit(parse(withApostrophes(text), { ignoreTag: true }));
  return names;
}

/** What is wrong with a pair of message and translation, if anything. */
export function wrongTranslation(text: string, german: string): string | undefined {
  try {
    const [needed, given] = [namesIn(text), namesIn(german)];
    const missing = [...needed].filter((name) => !given.has(name));
    const unknown = [...given].filter((name) => !needed.has(name));
    if (german.trim() === '') return 'has no words';
    if (missing.length > 0) return `leaves out {${missing.join('}, {')}}`;
    return unknown.length > 0
      ? `has {${unknown.join('}, {')}} which the message does not hand in`
      : undefined;
  } catch (error) {
    return `is not ICU MessageFormat: ${(error as Error).message}`;
  }
}

function wholeProgram(): { program: ts.Program; files: string[] } {
  const files = [
    ...filesBelow(join(root, 'packages'), isCode),
    ...filesBelow(join(root, 'apps/web/src'), isCode),
    ...filesBelow(join(root, 'apps/cli/src'), isCode),
  ].filter((file) => !/\/testing\/|\/saved-trees\//.test(file));
  const config = ts.getParsedCommandLineOfConfigFile(
    join(root, 'apps/web/tsconfig.json'),
    { incremental: false },
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
        throw new Error(String(messageText));
      },
    },
  )!;
  return { program: ts.createProgram(files, config.options), files };
}

async function catalogueOf(file: string): Promise<Record<string, string>> {
  return ((await import(pathToFileURL(join(root, file)).href)) as { german: Record<string, string> }).german;
}

async function main(below: string | undefined): Promise<number> {
  const { program, files } = wholeProgram();
  const messages = messagesOf(program, files).map((one) => ({ ...one, file: relative(root, one.file) }));
  const problems: string[] = [];
  const fragments = files.map((file) => relative(root, file)).filter((file) => file.endsWith('/german.ts'));
  const meaning = new Map<string, { german: string; file: string }>();
  const said = new Set(messages.map(({ text }) => text));
  for (const file of fragments)
    for (const [text, german] of Object.entries(await catalogueOf(file))) {
      const before = meaning.get(text);
      if (before === undefined) {
        meaning.set(text, { german, file });
        if (!said.has(text)) problems.push(`${file}: nobody says '${text}'`);
        const wrong = wrongTranslation(text, german);
        if (wrong !== undefined) problems.push(`${file}: the German of '${text}' ${wrong}`);
      } else if (before.german !== german)
        problems.push(`${file}: '${text}' is '${german}' here and '${before.german}' in ${before.file}`);
    }
  const missing: { file: string; text: string }[] = [];
  for (const { folder, catalogue } of spoken) {
    const german = await catalogueOf(catalogue);
    const seen = new Set<string>();
    for (const { file, line, text } of messages) {
      if (!file.startsWith(`${folder}/`)) continue;
      if (text === undefined) problems.push(`${file}:${line}: what is said here can be any text`);
      else if (!seen.has(text) && german[text] === undefined) missing.push({ file, text });
      if (text !== undefined) seen.add(text);
    }
  }
  if (below !== undefined) {
    const own = (text: string) => text.startsWith(below) || text.includes(` in ${below}`);
    for (const problem of problems.filter(own)) console.log(`! ${problem}`);
    for (const { file, text } of missing.filter(({ file }) => file.startsWith(below)))
      console.log(
        `  ${JSON.stringify(text)}: '', // ${file}${meaning.has(text) ? ` (is in ${meaning.get(text)!.file}, which this catalogue does not take in)` : ''}`,
      );
    return 0;
  }
  for (const problem of problems) console.error(problem);
  for (const { file, text } of missing) console.error(`${file}: no German for '${text}'`);
  console.log(
    `${new Set(messages.map(({ text }) => text)).size} messages, ${meaning.size} of them in German`,
  );
  return problems.length + missing.length === 0 ? 0 : 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exit(await main(process.argv[2]));
