import { english, type Language, minorUnits } from '@becket/core';
import type { Order } from '@becket/journal';

/** '14.50 EUR', as this language writes numbers; that of the device when not given. */
export const priceText = (amount: number, currency: string, language: Language = english): string =>
  `${language.money(minorUnits(amount), currency, 'none')} ${currency}`;

/** The order of supplies to this supplier that was drafted and not sent yet: what stands in it is written twice by another. */
export const draftTo = (supplier: string, orders: readonly Order[]): Order | undefined =>
  orders.findLast(
    (order) => order.what === 'supplies' && order.supplier === supplier && order.state === 'drafted',
  );

/** The bass set that was drafted and not sent yet, whoever makes it: a second draft would be a second set. */
export const bassDraft = (orders: readonly Order[]): Order | undefined =>
  orders.findLast(({ what, state }) => what === 'bass strings' && state === 'drafted');
