import { makeLanguage } from '@becket/core';
import { german as core } from '@becket/core/german';
import { german as journal } from '@becket/journal/german';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { german as papers } from '../german.ts';
import { testOptions } from './paper-options.ts';

/** The same paper for a reader of German. */
export const germanOptions: PaperOptions = {
  ...testOptions,
  language: makeLanguage('de-DE', { ...core, ...journal, ...papers }),
};
