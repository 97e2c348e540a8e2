import type { Catalogue } from '@becket/core';
import { german as core } from '@becket/core/german';
import { german as journal } from '@becket/journal/german';
import { german as papers } from '@becket/papers/german';
import { german as appraise } from './appraise/german.ts';
import { german as handOver } from './hand-over/german.ts';
import { german as imports } from './import/german.ts';
import { german as jobFile } from './job-file/german.ts';
import { german as order } from './order/german.ts';
import { german as scale } from './scale/german.ts';
import { german as settle } from './settle/german.ts';
import { german as string } from './string/german.ts';
import { german as besideFolders } from './words/german.ts';

/** All messages of the packages in German, for whoever makes papers or runs tasks. */
export const german: Catalogue = {
  ...core,
  ...journal,
  ...papers,
  ...besideFolders,
  ...appraise,
  ...imports,
  ...jobFile,
  ...order,
  ...scale,
  ...handOver,
  ...settle,
  ...string,
};
