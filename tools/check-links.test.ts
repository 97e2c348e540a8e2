import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { anchorsIn, followLinks, linksIn, projectPages } from './check-links.ts';

let folder = '';
const write = (file: string, text: string) => {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
};
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'links-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('linksIn()', () => {
  it('finds links, pictures, definitions and HTML, with their lines', () => {
    const page = [
      '[a](one.md) and ![b](two.svg "a plot")',
      '[c][name]',
      '',
      '[name]: three.md#here',
      '<img src="four.png">',
      '[d](five_(x).md)',
    ].join('\n');
    expect(linksIn(page)).toEqual([
      { line: 1, target: 'one.md' },
      { line: 1, target: 'two.svg' },
      { line: 4, target: 'three.md#here' },
      { line: 5, target: 'four.png' },
      { line: 6, target: 'five_(x).md' },
    ]);
  });

  it('leaves code alone', () => {
    expect(linksIn('```md\n[a](one.md)\n```\nand `[b](two.md)` too')).toEqual([]);
  });
});

describe('anchorsIn()', () => {
  it('turns headings into anchors, counts repeated ones and knows ids', () => {
    const page =
      '# The Job: its *parts*\n## Same\n## Same\n### B, `Scale` and cents\n<a id="here"></a>\n```\n# no\n```';
    expect([...anchorsIn(page)]).toEqual([
      'the-job-its-parts',
      'same',
      'same-1',
      'b-scale-and-cents',
      'here',
    ]);
  });
});

describe('followLinks()', () => {
  it('lets good links pass and counts those on the web', () => {
    write(
      'docs/a.md',
      '# A\n[b](b.md) [b2](./sub/c.md#part-two) [self](#a) [w](https://example.org) [dir](sub)',
    );
    write('docs/b.md', '# B');
    write('docs/sub/c.md', '## Part two\n[up](../a.md#a)');
    const report = followLinks(folder, ['docs/a.md', 'docs/sub/c.md']);
    expect(report).toEqual({ broken: [], followed: 5, onTheWeb: 1 });
  });

  it('names a missing page, a missing anchor, a wrong capital and a way out of the project', () => {
    write('docs/a.md', '# A\n[x](gone.md)\n[y](b.md#gone)\n[z](B.md)\n[o](../../elsewhere.md)\n[r](/b.md)');
    write('docs/b.md', '# B');
    const problems = followLinks(folder, ['docs/a.md']).broken.map(
      ({ line, problem }) => `${line}: ${problem}`,
    );
    expect(problems).toEqual([
      '2: gone.md leads nowhere',
      '3: b.md#gone: the page has no heading for #gone',
      '4: B.md leads nowhere',
      '5: ../../elsewhere.md leaves the project',
      '6: /b.md starts at the root of a machine; write it from this page',
    ]);
  });

  it('looks up pages of docs/ that a source names', () => {
    write('docs/explanation/a.md', '# A');
    write('packages/core/x.ts', '/* see docs/explanation/a.md and\n docs/explanation/gone.md */');
    expect(followLinks(folder, [], ['packages/core/x.ts']).broken).toEqual([
      { file: 'packages/core/x.ts', line: 2, problem: 'docs/explanation/gone.md leads nowhere' },
    ]);
  });
});

describe('the pages of this project', () => {
  it('have no link that leads nowhere', () => {
    const root = resolve(fileURLToPath(import.meta.url), '../..');
    const { pages, named } = projectPages();
    expect(pages.length).toBeGreaterThan(1);
    expect(followLinks(root, pages, named).broken).toEqual([]);
  });
});
