export { type Catalogue, english, type Language, makeLanguage, withApostrophes } from './language.ts';
export { type Message, type MessageValues, message, type Sayable } from './message.ts';
export { currencyOf, firstUnitOf, paperSizeOf } from './region.ts';
export { sayKnown } from './say-known.ts';
