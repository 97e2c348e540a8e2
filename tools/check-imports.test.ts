import { describe, expect, it } from 'vitest';
import { wrongImports } from './check-imports.ts';

const check = (file: string, text: string) => wrongImports([file], () => text).map(({ problem }) => problem);

describe('the import check', () => {
  it('lets an arrow of the picture pass', () => {
    expect(check('packages/journal/src/a.ts', "import { metres } from '@becket/core';")).toEqual([]);
  });

  it('names an arrow that is not in the picture, static, dynamic or type only', () => {
    expect(check('packages/core/src/a.ts', "import { foldJob } from '@becket/journal';")).toEqual([
      'packages/core may not import @becket/journal',
    ]);
    expect(check('packages/papers/src/a.ts', "const tasks = await import('@becket/tasks');")).toHaveLength(1);
    expect(check('packages/tasks/src/a.ts', "import type { X } from '@becket/store/sqlite';")).toHaveLength(
      1,
    );
  });

  it('names a relative import that leaves its workspace, and one web task that imports another', () => {
    expect(check('packages/core/src/a.ts', "import '../../journal/src/index.ts';")).toHaveLength(1);
    expect(check('apps/web/src/tasks/record/a.ts', "import '../scale/b.ts';")).toHaveLength(1);
  });

  it('keeps node, clock and chance out of the pure packages, and not out of comments', () => {
    expect(check('packages/core/src/a.ts', "import 'node:fs';")).toHaveLength(1);
    expect(check('packages/journal/src/a.ts', 'const now = Date.now();')).toHaveLength(1);
    expect(check('packages/journal/src/a.ts', '// never call Date.now() here')).toEqual([]);
  });
});
