import type { Catalogue } from './words/index.ts';

/** All messages of this package in German, chapter by chapter. */
export const german: Catalogue = {};
