import {
  message,
  type PinAllowance,
  STARTING_PIN_ALLOWANCE,
  STARTING_WIRE_ALLOWANCE,
  type WireAllowance,
} from '@becket/core';
import { COMMON_CUT_ALLOWANCES } from '../scale/loops-and-cuts.ts';

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

/** What a wire needs besides the string itself. */
export interface CutPolicy {
  readonly coils: number;
  readonly becket_m: number;
  /** Cut off at each pin. */
  readonly waste_m: number;
  /** The hitch loop of a tied wire. */
  readonly tie_m: number;
  /** Taken where nobody measured it. */
  readonly hitchPinDiameter_m: number;
  readonly pinDiameter_m: number;
  readonly frontLength_m: number;
  readonly backLength_m: number;
}

/** What a wire is cut with is the same for the cut list and for the purchase; the other figures are our own to start from. */
export const STARTING_ORDER_POLICY: OrderPolicy = {
  source: message('our own starting figures'),
  wire: STARTING_WIRE_ALLOWANCE,
  pins: STARTING_PIN_ALLOWANCE,
  testPins: 2,
  testPinsSource: message('common practice, no source'),
  softShare: 0.1,
  cutSource: message('common practice, no source'),
  cut: {
    ...COMMON_CUT_ALLOWANCES,
    hitchPinDiameter_m: 0.004,
    pinDiameter_m: 0.0072,
    frontLength_m: 0.12,
    backLength_m: 0.18,
  },
  sundries: [
    { name: message('Dry graphite for the bridge'), unit: 'piece', quantity: 1 },
    { name: message('Felt glue'), unit: 'piece', quantity: 1 },
    { name: message('Fine abrasive for plate and agraffes'), unit: 'set', quantity: 1 },
  ],
};
