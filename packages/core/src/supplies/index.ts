// Money in whole minor units

export { currencyCodes, currencyDigits } from './currency-digits.ts';
export { inMinorUnits, type MinorUnits, minorUnits, sumOfMoney } from './minor-units.ts';
export { type MoneyStyle, moneyText, plainMoneyText } from './money-text.ts';
export { parseMoney } from './typed-money.ts';

// Prices, taxes and sums

export { inCash } from './cash-rounding.ts';
export { type EstimateTotals, estimateTotals, type PricedLine } from './estimate-totals.ts';
export { priceOfQuantity, priceOfTime, roundedRatio } from './exact-price.ts';
export { type TaxClass, type TaxedAmount, type TaxedTotal, taxedTotal } from './tax.ts';

// Wire, coils and pins to buy

export { type CoilsToBuy, coilsToBuy, type WireAsSold } from './coils.ts';
export {
  type CountNeed,
  type PacksToBuy,
  type PinAllowance,
  packsToBuy,
  pinsNeeded,
  STARTING_PIN_ALLOWANCE,
} from './pin-count.ts';
export {
  STARTING_WIRE_ALLOWANCE,
  type WireAllowance,
  type WireNeed,
  wireLength,
  wireMass,
  wireNeed,
} from './wire-quantity.ts';
