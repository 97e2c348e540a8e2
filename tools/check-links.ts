/*
 * Follows every link, picture and anchor in docs/, in every README and in the other pages at the root, and prints those
 * that lead nowhere. Pages of docs/ that a source file names must be there too. Addresses on the web are counted, not
 * fetched: the check must give the same answer offline.
 *
 *   node --import tsx tools/check-links.ts
 */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { filesBelow } from './files-below.ts';

const root = resolve(fileURLToPath(import.meta.url), '../..');

export interface Link {
  readonly line: number;
  readonly target: string;
}

/** A page without its code, line for line, so that links inside code are not followed. */
function withoutCode(page: string): string {
  const blank = (text: string) => text.replace(/[^\n]/g, ' ');
  return page
    .replace(/^( {0,3})(```|~~~)[\s\S]*?^ {0,3}\2[^\n]*$/gm, blank)
    .replace(/(`+)(?!`)[^\n]*?[^`]\1(?!`)/g, blank)
    .replace(/<!--[\s\S]*?-->/g, blank);
}

/** Every link, picture, link definition and HTML address of a page. */
export function linksIn(page: string): Link[] {
  const text = withoutCode(page);
  const forms = [
    /\]\(\s*<([^>\n]+)>[^)\n]*\)/g, // [words](<target with spaces>)
    /\]\(\s*([^()<>\s]+(?:\([^()\s]*\)[^()\s]*)*)(?:\s+["'][^\n]*?["'])?\s*\)/g, // [words](target "title"), ![words](target)
    /^ {0,3}\[[^\]\n]+\]:\s*<?(\S+?)>?(?:\s+["'(].*)?$/gm, // [name]: target
    /<[^>\n]+\s(?:href|src|srcset)\s*=\s*["']([^"'\n]+)["']/g, // <a href="target">, <img src="target">
  ];
  return forms
    .flatMap((form) =>
      [...text.matchAll(form)].map((match) => ({
        line: text.slice(0, match.index).split('\n').length,
        target: match[1]!,
      })),
    )
    .sort((a, b) => a.line - b.line);
}

/** Every anchor of a page: its headings, as they are turned into addresses on common hosts, and its `id` attributes. */
export function anchorsIn(page: string): Set<string> {
  const fenced = page.replace(/^( {0,3})(```|~~~)[\s\S]*?^ {0,3}\2[^\n]*$/gm, '');
  const anchors = new Set<string>();
  for (const heading of fenced.matchAll(/^ {0,3}#{1,6}\s+(.+?)\s*#*\s*$/gm)) {
    const words = heading[1]!.replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1').replace(/<[^>]+>/g, '');
    const slug = words
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\p{M}\s_-]/gu, '')
      .replace(/\s/g, '-');
    let name = slug;
    for (let count = 1; anchors.has(name); count++) name = `${slug}-${count}`;
    anchors.add(name);
  }
  for (const [, id] of fenced.matchAll(/<[^>]+\s(?:id|name)\s*=\s*["']([^"']+)["']/g)) anchors.add(id!);
  return anchors;
}

export interface BrokenLink {
  readonly file: string;
  readonly line: number;
  readonly problem: string;
}

export interface LinkReport {
  readonly broken: readonly BrokenLink[];
  readonly followed: number;
  /** Addresses on the web, which are not fetched. */
  readonly onTheWeb: number;
}

/**
 * Follows the links of some pages below a folder.
 * `named` are source files, in which only mentions of `docs/….md` are looked up.
 */
export function followLinks(
  folder: string,
  pages: readonly string[],
  named: readonly string[] = [],
): LinkReport {
  const broken: BrokenLink[] = [];
  let followed = 0;
  let onTheWeb = 0;
  for (const file of pages) {
    for (const { line, target } of linksIn(readFileSync(join(folder, file), 'utf8'))) {
      if (/^(https?:|mailto:)/i.test(target)) {
        onTheWeb++;
        continue;
      }
      followed++;
      const problem = problemWith(folder, file, target);
      if (problem !== undefined) broken.push({ file, line, problem });
    }
  }
  for (const file of named) {
    const source = readFileSync(join(folder, file), 'utf8');
    for (const mention of source.matchAll(/\bdocs\/[\w./-]+\.md(?:#[\w-]+)?/g)) {
      followed++;
      const problem = problemWith(folder, 'a-file-at-the-root', mention[0]);
      const line = source.slice(0, mention.index).split('\n').length;
      if (problem !== undefined) broken.push({ file, line, problem });
    }
  }
  return { broken, followed, onTheWeb };
}

function problemWith(folder: string, file: string, target: string): string | undefined {
  const hash = target.indexOf('#');
  const path = hash === -1 ? target : target.slice(0, hash);
  const anchor = hash === -1 ? undefined : safeDecode(target.slice(hash + 1));
  if (path.startsWith('/')) return `${target} starts at the root of a machine; write it from this page`;
  const place = path === '' ? join(folder, file) : resolve(folder, dirname(file), safeDecode(path));
  if (relative(folder, place).startsWith('..')) return `${target} leaves the project`;
  if (!existsWithCase(folder, place)) return `${target} leads nowhere`;
  if (anchor === undefined || anchor === '') return undefined;
  if (!statSync(place).isFile() || !place.endsWith('.md')) {
    return /^L\d+(-L\d+)?$/.test(anchor) ? undefined : `${target}: only a page in Markdown has anchors`;
  }
  return anchorsIn(readFileSync(place, 'utf8')).has(anchor)
    ? undefined
    : `${target}: the page has no heading for #${anchor}`;
}

/** Whether a path is there, letter for letter; some file systems do not mind capitals, and those that read us may. */
function existsWithCase(folder: string, place: string): boolean {
  if (!existsSync(place)) return false;
  let parent = folder;
  for (const part of relative(folder, place).split(/[\\/]/).filter(Boolean)) {
    if (!readdirSync(parent).includes(part)) return false;
    parent = join(parent, part);
  }
  return true;
}

function safeDecode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** The pages of this project, and the source files that may name one. */
export function projectPages(): { pages: string[]; named: string[] } {
  const below = (name: string, fits: RegExp) =>
    existsSync(join(root, name))
      ? filesBelow(join(root, name), fits).map((file) => relative(root, file))
      : [];
  const atRoot = readdirSync(root).filter((name) => name.endsWith('.md'));
  const readmes = ['packages', 'apps', 'examples', 'bench', 'tools', 'checks'].flatMap((name) =>
    below(name, /\.md$/),
  );
  const named = ['packages', 'apps', 'tools', 'bench'].flatMap((name) => below(name, /\.(ts|tsx|mjs)$/));
  return {
    pages: [...atRoot, ...below('docs', /\.md$/), ...readmes],
    named: named.filter((file) => !file.startsWith('tools/check-links')),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { pages, named } = projectPages();
  const { broken, followed, onTheWeb } = followLinks(root, pages, named);
  for (const { file, line, problem } of broken) console.error(`${file}:${line}: ${problem}`);
  console.log(
    `links: ${pages.length} pages read, ${followed} links followed, ${broken.length} lead nowhere (${onTheWeb} on the web not fetched)`,
  );
  process.exit(broken.length === 0 ? 0 : 1);
}
