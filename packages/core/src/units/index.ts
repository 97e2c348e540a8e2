export * from './quantities.ts';
export type { Quantity } from './quantity.ts';
export { requireNotNegative, requirePositive, requireWithin } from './require.ts';
