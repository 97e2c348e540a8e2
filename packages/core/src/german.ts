import { german as evidence } from './evidence/german.ts';
import { german as pins } from './pins/german.ts';
import { german as pitch } from './pitch/german.ts';
import { german as rescale } from './rescale/german.ts';
import { german as scale } from './scale/german.ts';
import { german as sound } from './sound/german.ts';
import { german as supplies } from './supplies/german.ts';
import { german as tables } from './tables/german.ts';
import { german as units } from './units/german.ts';
import type { Catalogue } from './words/index.ts';

/** All messages of this package in German, chapter by chapter. */
export const german: Catalogue = {
  ...evidence,
  ...pins,
  ...pitch,
  ...rescale,
  ...scale,
  ...sound,
  ...supplies,
  ...tables,
  ...units,
};
