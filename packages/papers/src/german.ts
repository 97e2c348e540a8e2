import type { Catalogue } from '@becket/core';

/** All messages of this package in German. */
export const german: Catalogue = {};
