import {
  message,
  type PinAllowance,
  STARTING_PIN_ALLOWANCE,
  STARTING_WIRE_ALLOWANCE,
  type WireAllowance,
} from '@becket/core';
import { type CutPolicy, STARTING_CUT_POLICY } from '../cut/cut-policy.ts';

/** How much more is bought than is strung, and what is taken where nothing was read: plain data, shown with the result. */
export interface OrderPolicy {
  readonly source: string;
  readonly wire: WireAllowance;
  readonly pins: PinAllowance;
  /** Of each size that was not driven yet, in the worst and the best place. */
  readonly testPins: number;
  readonly testPinsSource: string;
  /** Spares of felts and other soft parts, as a share. */
  readonly softShare: number;
  readonly cut: CutPolicy;
  readonly cutSource: string;
  readonly sundries: readonly {
    readonly name: string;
    readonly unit: 'piece' | 'set';
    readonly quantity: number;
  }[];
}

export const STARTING_ORDER_POLICY: OrderPolicy = {
  source: message('our own starting figures'),
  wire: STARTING_WIRE_ALLOWANCE,
  pins: STARTING_PIN_ALLOWANCE,
  testPins: 2,
  testPinsSource: message('common practice, no source'),
  softShare: 0.1,
  cutSource: message('common practice, no source'),
  cut: STARTING_CUT_POLICY,
  sundries: [
    { name: message('Dry graphite for the bridge'), unit: 'piece', quantity: 1 },
    { name: message('Felt glue'), unit: 'piece', quantity: 1 },
    { name: message('Fine abrasive for plate and agraffes'), unit: 'set', quantity: 1 },
  ],
};
