import type { AddressCode } from '../page-tree.ts';
import type { PaperOptions } from './paper-options.ts';

/** The code that leads back to the job, with its line in words; none where the paper knows no address. */
export const addressCode = ({ address }: Pick<PaperOptions, 'address'>, text: string): AddressCode[] =>
  address === undefined ? [] : [{ is: 'address code', address, text }];
