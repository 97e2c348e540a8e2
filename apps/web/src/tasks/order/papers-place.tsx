import { type PaperOffer, Papers } from '../../piano/papers.tsx';

const offers: readonly PaperOffer[] = [
  {
    paper: 'bass-string-order',
    words: 'Bass string order',
    says: 'String by string with both units, checks and digest: for whoever makes the strings.',
  },
  {
    paper: 'bass-string-plan',
    words: 'Bass string plan, 1:1',
    says: 'The strings at true length over several sheets. Print at 100 %, and measure both rulers.',
  },
  {
    paper: 'purchase-list',
    words: 'Purchase list',
    says: 'By supplier and by size, against the stock, with days to order by.',
  },
];

/** The papers of an order: to look at, to print, to hand on. */
export function PapersPlace() {
  return <Papers offers={offers} />;
}
