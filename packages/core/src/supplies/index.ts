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
