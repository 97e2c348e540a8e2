import { describe, expect, it } from 'vitest';
import { answerWords, proofWords } from './answer-words.ts';
import { answer } from './testing/planned-answer.ts';

describe('words', () => {
  it('say what an answer comes to', () => {
    expect(answerWords(answer('a', 0.001))).toBe(
      '1 note changed, load unchanged, tension uneven by 1.2 %, B by 2.0 %, 2 changes of plain size, 3 tied',
    );
    expect(answerWords({ ...answer('a', 0.001), loadChange_n: 1234 })).toContain('changed, load +1.2 kN, ');
    expect(answerWords({ ...answer('a', 0.001), loadChange_n: -1234 }, 'in')).toContain(
      'changed, load −280 lbf, ',
    );
  });

  it('say that all is proved only where all is', () => {
    const proved = answer('one', 0.001);
    expect(proofWords([proved])).toMatch(/^Proved: /);
    expect(proofWords([proved, { ...proved, isProved: false, mostBetter: 0.01 }])).toMatch(
      /^Proved where nothing else is said/,
    );
  });
});
