import { describe, expect, it } from 'vitest';
import { renderCsv } from '../render/csv.ts';
import { allPapers } from '../testing/all-papers.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';

const german = allPapers(germanOptions);

describe('the table for machines', () => {
  it.each(allPapers(testOptions).map(({ tree }, index) => [tree.paper, tree, german[index]!.tree] as const))(
    'is the same in every language: %s',
    (_, inEnglish, inGerman) => {
      expect(inGerman.title).not.toBe(inEnglish.title);
      expect(renderCsv(inGerman)).toBe(renderCsv(inEnglish));
    },
  );
});
