import { english } from '@becket/core';
import type { PaperOptions } from '../every-paper/paper-options.ts';

/** One fixed day and address, so that a tree made twice is the same tree. */
export const testOptions: PaperOptions = {
  at: '2026-03-10T12:00:00.000Z',
  language: english,
  firstUnit: 'mm',
  address: 'https://shop.example/#/job/01SMA/record',
  isSealIntact: true,
};
