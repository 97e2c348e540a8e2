import type { Catalogue } from '@becket/core';
import { german as asFoundRecord } from './as-found-record/german.ts';
import { german as bassStringOrder } from './bass-string-order/german.ts';

/** All messages of this package in German. */
export const german: Catalogue = { ...bassStringOrder, ...asFoundRecord };
