import { message } from '@becket/core';
import { useLanguage } from '../../parts/language.tsx';
import { Papers } from '../../piano/papers.tsx';

const offers = [
  {
    paper: 'bass-string-order',
    words: message('Bass string order'),
    says: message('String by string with both units, checks and digest: for whoever makes the strings.'),
  },
  {
    paper: 'bass-string-plan',
    words: message('Bass string plan, 1:1'),
    says: message('The strings at true length over several sheets. Print at 100 %, and measure both rulers.'),
  },
  {
    paper: 'purchase-list',
    words: message('Purchase list'),
    says: message('By supplier and by size, against the stock, with days to order by.'),
  },
] as const;

/** The papers of an order: to look at, to print, to hand on. */
export function PapersPlace() {
  const { say } = useLanguage();
  return (
    <Papers
      offers={offers.map(({ paper, words, says }) => ({ paper, words: say(words), says: say(says) }))}
    />
  );
}
