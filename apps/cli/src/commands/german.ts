import type { Catalogue } from '@becket/core';
import { german as ofJob } from './german-of-job.ts';
import { german as ofShop } from './german-of-shop.ts';

export const german: Catalogue = {
  ...ofJob,
  ...ofShop,
};
