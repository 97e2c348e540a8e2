import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'our own starting figures': 'eigene Anfangswerte',
  "Cannot work with this currency: three letters of ISO 4217 such as EUR or USD are needed, '{currency}' was found. Correct it.":
    'Mit dieser Währung lässt sich nicht rechnen: Nötig sind drei Buchstaben nach ISO 4217 wie EUR oder USD, gefunden wurde „{currency}“. Bitte berichtigen.',
  "Cannot read an amount of {currency}: {digits, plural, =0 {no digits} other {at most # digits}} after the decimal sign are needed, '{typed}' was found. Leave out what is smaller than the currency's smallest unit.":
    'Der Betrag in {currency} lässt sich nicht lesen: Nach dem Dezimalzeichen {digits, plural, =0 {darf keine Stelle} one {darf höchstens # Stelle} other {dürfen höchstens # Stellen}} stehen, gefunden wurde „{typed}“. Weglassen, was kleiner ist als die kleinste Einheit der Währung.',
  "Cannot read '{typed}' as an amount: the {sign, select, dot {dot} other {comma}} could set off thousands or be the decimal sign. Write {whole}, or {digits, select, many {say which decimal sign you use} other {{decimals} with two digits after it}}.":
    '„{typed}“ lässt sich nicht als Betrag lesen: {sign, select, dot {Der Punkt} other {Das Komma}} könnte Tausender abtrennen oder das Dezimalzeichen sein. {whole} schreiben oder {digits, select, many {angeben, welches Dezimalzeichen gilt} other {{decimals} mit zwei Stellen danach}}.',
  'Cannot read an amount: a number such as {example} is needed, nothing was found. Type it, or leave the line unpriced.':
    'Der Betrag lässt sich nicht lesen: Nötig ist eine Zahl wie {example}, gefunden wurde nichts. Eingeben oder die Zeile ohne Preis lassen.',
  "Cannot read an amount: a number such as {example} is needed, '{typed}' was found. Type digits, with one decimal sign.":
    'Der Betrag lässt sich nicht lesen: Nötig ist eine Zahl wie {example}, gefunden wurde „{typed}“. Ziffern mit einem Dezimalzeichen eingeben.',
  'Cannot compute the coils to buy as a wire of {cut} m does not come out of one of {length} m. Choose a longer coil or piece for this size.':
    'Die zu kaufenden Ringe lassen sich nicht berechnen: Ein Draht von {cut} m lässt sich nicht aus einem von {length} m schneiden. Für diese Stärke einen längeren Ring oder ein längeres Stück wählen.',
};
