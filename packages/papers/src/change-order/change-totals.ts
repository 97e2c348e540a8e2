import { addToGroup, inMinorUnits, type MinorUnits, minorUnits, sumOfMoney } from '@becket/core';
import type { Job } from '@becket/journal';

/** What the lines of a change order come to. */
export interface ChangeOrderTotals {
  /** By currency, in whole minor units. */
  readonly prices: readonly { readonly currency: string; readonly minorUnits: number }[];
  readonly days: number;
  readonly withoutPrice: number;
  readonly withoutDays: number;
}

/** Sums of a change order. What nobody has priced is counted, not taken for nothing. */
export function changeOrderTotals(damages: Job['damages']): ChangeOrderTotals {
  const amounts = new Map<string, MinorUnits[]>();
  let days = 0;
  for (const { priceMinorUnits, currency, days: own } of damages) {
    if (priceMinorUnits !== undefined && currency !== undefined)
      addToGroup(amounts, currency, minorUnits(priceMinorUnits));
    days += own ?? 0;
  }
  return {
    prices: [...amounts].map(([currency, all]) => ({ currency, minorUnits: inMinorUnits(sumOfMoney(all)) })),
    days,
    withoutPrice: damages.filter((one) => one.priceMinorUnits === undefined).length,
    withoutDays: damages.filter((one) => one.days === undefined).length,
  };
}
