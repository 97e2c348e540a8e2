import type { Catalogue } from '@becket/core';
import { german as asFoundRecord } from './as-found-record/german.ts';

/** All messages of this package in German. */
export const german: Catalogue = { ...asFoundRecord };
