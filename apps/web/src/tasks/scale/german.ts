import type { Catalogue } from '@becket/core';
import { german as compare } from './german-compare.ts';
import { german as found } from './german-found.ts';
import { german as loops } from './german-loops.ts';
import { german as propose } from './german-propose.ts';

export const german: Catalogue = {
  ...found,
  ...compare,
  ...loops,
  ...propose,
};
