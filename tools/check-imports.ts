/*
 * Reads every import of the workspaces and prints each arrow that the picture in ARCHITECTURE.md does not have.
 *
 *   node --import tsx tools/check-imports.ts
 */
import { readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { filesBelow } from './files-below.ts';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..');

/** workspace → workspaces it may import. */
const arrows: Readonly<Record<string, readonly string[]>> = {
  'packages/core': [],
  'packages/journal': ['@becket/core'],
  'packages/store': ['@becket/journal'],
  'packages/papers': ['@becket/journal', '@becket/core', '@becket/journal/german', '@becket/core/german'],
  'packages/tasks': [
    '@becket/papers',
    '@becket/papers/pdf',
    '@becket/papers/means',
    '@becket/store',
    '@becket/journal',
    '@becket/core',
    '@becket/papers/german',
    '@becket/journal/german',
    '@becket/core/german',
  ],
  'packages/contract': ['@becket/tasks', '@becket/journal'],
  'apps/server': [
    '@becket/contract',
    '@becket/contract/routes',
    '@becket/tasks',
    '@becket/journal',
    '@becket/store',
    '@becket/store/sqlite',
    '@becket/store/files',
    '@becket/store/memory',
  ],
  'apps/cli': [
    '@becket/contract',
    '@becket/server',
    '@becket/tasks',
    '@becket/tasks/compute',
    '@becket/tasks/german',
    '@becket/tasks/language-for',
    '@becket/journal',
    '@becket/core',
    '@becket/store',
    '@becket/store/sqlite',
    '@becket/store/files',
  ],
  'apps/web': [
    '@becket/contract',
    '@becket/tasks',
    '@becket/tasks/german',
    // One calculation for a worker, so that it loads no more than that.
    '@becket/tasks/infer-wire-sizes',
    '@becket/tasks/make-paper',
    '@becket/tasks/plan-scales',
    '@becket/tasks/save-job',
    '@becket/journal',
    '@becket/core',
    '@becket/store',
  ],
};

/** Packages whose code runs everywhere: no node module, no clock, no randomness. */
const pure = ['packages/core', 'packages/journal'];
const impureWords = [
  /\bMath\.random\(/,
  /\bDate\.now\(/,
  /\bnew Date\(\)/,
  /\bfetch\(/,
  /\bprocess\./,
  /\bcrypto\.getRandomValues/,
];

export interface WrongImport {
  readonly file: string;
  readonly problem: string;
}

/** Every import that is not in the picture. `read` and `files` are handed in so that a test can hand in its own. */
export function wrongImports(files: readonly string[], read: (file: string) => string): WrongImport[] {
  const wrong: WrongImport[] = [];
  for (const file of files) {
    const workspace = file.split('/').slice(0, 2).join('/');
    const allowed = arrows[workspace];
    if (allowed === undefined) continue;
    const text = read(file);
    // A test may read a file or reach a neighbour's testing tools; the arrows of the program itself still hold for it.
    const isTest = /\.test\.tsx?$|\/testing\/|\/e2e\/|\.config\.ts$/.test(file);
    for (const { fileName } of ts.preProcessFile(text, true, true).importedFiles) {
      if (fileName.startsWith('@becket/')) {
        const own = `@becket/${workspace.split('/')[1]}`;
        const isOwn = fileName === own || fileName.startsWith(`${own}/`);
        const isSharedTesting = isTest && /^@becket\/(store|journal|tasks)(\/|$)/.test(fileName);
        if (!isOwn && !isSharedTesting && !allowed.includes(fileName)) {
          wrong.push({ file, problem: `${workspace} may not import ${fileName}` });
        }
      } else if (fileName.startsWith('.')) {
        const target = relative(root, resolve(root, dirname(file), fileName));
        const isData = target.endsWith('.json');
        if (!isData && !isTest && !target.startsWith(`${workspace}/`)) {
          wrong.push({ file, problem: `${workspace} may not reach into ${target}` });
        }
        const webTask = /^apps\/web\/src\/tasks\/([^/]+)\//;
        const from = webTask.exec(file)?.[1];
        const to = webTask.exec(target)?.[1];
        if (from !== undefined && to !== undefined && from !== to) {
          wrong.push({ file, problem: `the task '${from}' of the web app may not import the task '${to}'` });
        }
      } else if (fileName.startsWith('node:') && pure.includes(workspace) && !isTest) {
        wrong.push({ file, problem: `${workspace} is pure and may not import ${fileName}` });
      }
    }
    if (pure.includes(workspace) && !isTest) {
      const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
      for (const word of impureWords) {
        if (word.test(code))
          wrong.push({ file, problem: `${workspace} is pure: ${word.source} has no place in it` });
      }
    }
  }
  return wrong;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const files = ['packages', 'apps']
    .flatMap((folder) => filesBelow(join(root, folder), /\.tsx?$/))
    .map((file) => relative(root, file));
  const wrong = wrongImports(files, (file) => readFileSync(join(root, file), 'utf8'));
  for (const { file, problem } of wrong) console.error(`${file}: ${problem}`);
  console.log(`imports: ${files.length} files read, ${wrong.length} arrows that are not in the picture`);
  process.exit(wrong.length === 0 ? 0 : 1);
}
