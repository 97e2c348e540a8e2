/*
 * What the purchase list prints, in words already: whoever works it out names things, sizes and quantities as its screens do.
 */

/** One thing to buy from a supplier. */
export interface PurchaseRow {
  readonly what: string;
  readonly article: string;
  /** '64 g' */
  readonly needed: string;
  /** '40 g on the shelf', '' where nothing is. */
  readonly covered: string;
  readonly packs: number;
  readonly pack: string;
  readonly price: string;
  readonly total: string;
  /** YYYY-MM-DD */
  readonly orderBy: string | undefined;
  readonly remark: string | undefined;
  /** For machines: whole numbers of `unit`, and money with a decimal point. */
  readonly machine: {
    readonly item: string;
    readonly unit: string;
    readonly needed: number;
    readonly toBuy: number;
    readonly packHolds: number;
    readonly price: string;
    readonly total: string;
  };
}

export interface PurchaseFigures {
  readonly scale: string;
  readonly isChosenScale: boolean;
  readonly scaleProblem: string | undefined;
  readonly neededOn: string | undefined;
  readonly suppliers: readonly {
    readonly supplier: string;
    readonly currency: string;
    readonly total: string;
    readonly orderBy: string | undefined;
    readonly rows: readonly PurchaseRow[];
  }[];
  /** To buy, but in no price list. */
  readonly notListed: readonly NeedRow[];
  readonly covered: readonly NeedRow[];
  readonly unknown: readonly NeedRow[];
  /** Every wire size and every pin size of the job, whoever sells it. */
  readonly bySize: readonly NeedRow[];
  readonly notCounted: readonly string[];
  readonly allowances: readonly string[];
  /** What is drafted, sent or here already, one line an order. */
  readonly orders: readonly string[];
}

export interface NeedRow {
  readonly what: string;
  /** 'unknown', in the language of the list, where nobody can say yet. */
  readonly needed: string;
  readonly onHand: string;
  readonly toBuy: string;
  readonly because: string;
}
