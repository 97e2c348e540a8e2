import type { Catalogue } from '@becket/core';

/** What the commands about the stock, the price lists and the orders say. */
export const german: Catalogue = {
  '[of stock] item': 'Artikel',
  'what else is to be known': 'was sonst zu wissen ist',
  'why; kept in the record': 'warum; bleibt im Journal',
  // stock
  'the shelf of the shop: counts, what came, what was used':
    'das Lager der Werkstatt: gezählt, eingegangen, verbraucht',
  'list the shelf: on hand, set aside, free, and what to buy again':
    'das Lager auflisten: vorhanden, zurückgelegt, frei und was nachzukaufen ist',
  "as the list writes it: 'wire 0.991 mm', 'tuning pin 7.163 x 63.5 mm', 'Felt glue (piece)'":
    'wie die Liste es schreibt: „wire 0.991 mm“, „tuning pin 7.163 x 63.5 mm“, „Felt glue (piece)“',
  "'500 g', '1.5 kg', '2 m', '240 pieces'": '„500 g“, „1.5 kg“, „2 m“, „240 pieces“',
  'note what lies on the shelf': 'eintragen, was im Lager liegt',
  'note what came in': 'eintragen, was eingegangen ist',
  'whom it came from': 'von wem es kam',
  'note what was taken from the shelf': 'eintragen, was dem Lager entnommen wurde',
  'the job it was taken for: what is set aside for that job is used up first':
    'der Auftrag, für den es entnommen wurde: was für ihn zurückgelegt ist, wird zuerst verbraucht',
  'say below what it is bought again; 0 when it need not be kept':
    'angeben, unter welcher Menge nachgekauft wird; 0, wenn nichts vorrätig sein muss',
  'what a job needs, how far the shelf covers it, and what is to be bought':
    'was ein Auftrag braucht, wie weit das Lager reicht und was zu kaufen ist',
  needed: 'gebraucht',
  covered: 'gedeckt',
  'on order': 'bestellt',
  'on hand': 'vorhanden',
  'set aside': 'zurückgelegt',
  '[of stock] free': 'frei',
  'at least': 'mindestens',
  'buy again': 'nachkaufen',
  'set aside for a job what the shelf has free of its supplies':
    'für einen Auftrag zurücklegen, was das Lager von seinem Material frei hat',
  'Nothing is set aside for this job: the shelf has none of its supplies free.':
    'Für diesen Auftrag ist nichts zurückgelegt: Das Lager hat von seinem Material nichts frei.',
  reservation: 'Reservierung',
  'end a reservation': 'eine Reservierung aufheben',
  'its id, as becket stock reserve and becket --json stock list print it':
    'ihre Kennung, wie becket stock reserve und becket --json stock list sie ausgeben',
  'The reservation is released.': 'Die Reservierung ist aufgehoben.',
  'take back something noted of the stock, by its entry':
    'etwas zum Lager Eingetragenes zurücknehmen, mit seiner Kennung',
  'id of the entry, as becket --json stock list prints the last ones':
    'Kennung des Eintrags, wie becket --json stock list die letzten ausgibt',
  'It is taken back; what was noted stays in the journal.':
    'Zurückgenommen; was eingetragen war, bleibt im Journal.',
  'Nothing was ever noted of the stock. Begin with becket stock count.':
    'Zum Lager wurde noch nie etwas eingetragen. Mit becket stock count beginnen.',
  '{item}: {onHand}. Noted as {entry}.': '{item}: {onHand}. Eingetragen als {entry}.',
  // prices
  "the suppliers' price lists": 'die Preislisten der Lieferanten',
  'list the suppliers, or what one of them sells':
    'die Lieferanten auflisten, oder was einer von ihnen verkauft',
  'its articles': 'seine Artikel',
  'No supplier is known yet. Begin with becket prices keep.':
    'Noch ist kein Lieferant bekannt. Mit becket prices keep beginnen.',
  supplier: 'Lieferant',
  articles: 'Artikel',
  currency: 'Währung',
  'lead time, days': 'Lieferzeit, Tage',
  'kept on': 'gespeichert am',
  pack: 'Packung',
  "Cannot list the prices of '{supplier}': a supplier with a price list is needed: {known, select, none {there is none yet} other {{names}}}.":
    'Die Preise von „{supplier}“ lassen sich nicht auflisten: Nötig ist ein Lieferant mit Preisliste: {known, select, none {es gibt noch keinen} other {{names}}}.',
  "read a supplier's price list from a CSV and keep it, all of it or nothing":
    'die Preisliste eines Lieferanten aus einer CSV einlesen und speichern, ganz oder gar nicht',
  'whose it is': 'von wem sie ist',
  'the CSV; becket prices example prints one to fill in':
    'die CSV; becket prices example gibt eine zum Ausfüllen aus',
  'of all its prices: EUR, USD …': 'Währung aller Preise: EUR, USD …',
  'calendar days from order to delivery': 'Kalendertage von der Bestellung bis zur Lieferung',
  '{articles} articles of {supplier} are kept.': '{articles} Artikel von {supplier} sind gespeichert.',
  'print a price list to fill in, with invented articles':
    'eine Preisliste zum Ausfüllen ausgeben, mit erfundenen Artikeln',
  "Cannot take the lead time '{text}': a whole number of days is needed.":
    'Die Lieferzeit „{text}“ lässt sich nicht verwenden: Nötig ist eine ganze Zahl von Tagen.',
  // orders
  "id of the job; 'shop' for what is ordered for the shelf":
    'Kennung des Auftrags; „shop“ für das, was fürs Lager bestellt wird',
  'orders of a job or of the shelf: draft, send, receive, measure':
    'Bestellungen eines Auftrags oder fürs Lager: entwerfen, abschicken, annehmen, messen',
  'list the orders with their state': 'die Bestellungen mit ihrem Stand auflisten',
  'draft an order to a supplier for what the purchase list says':
    'eine Bestellung bei einem Lieferanten nach der Einkaufsliste entwerfen',
  'one whose price list is kept': 'einer, dessen Preisliste gespeichert ist',
  'when the goods are to be here, YYYY-MM-DD': 'wann die Ware da sein soll, JJJJ-MM-TT',
  'when they are to be here, YYYY-MM-DD': 'wann sie da sein sollen, JJJJ-MM-TT',
  "Cannot draft an order to '{supplier}': a supplier of whom something is to be bought is needed: {known, select, none {there is none} other {{names}}}. Look at becket stock cover and becket prices.":
    'Bei „{supplier}“ lässt sich keine Bestellung entwerfen: Nötig ist ein Lieferant, bei dem etwas zu kaufen ist: {known, select, none {es gibt keinen} other {{names}}}. Siehe becket stock cover und becket prices.',
  'the checks of the bass string order: what does not agree, and who answers for it':
    'die Prüfungen der Basssaitenbestellung: was nicht zusammenpasst und wer dafür einsteht',
  '{check}: {sentence} Signed by {name}: {reason}': '{check}: {sentence} Unterschrieben von {name}: {reason}',
  '{strings} strings; every check passes or is signed.':
    '{strings} Saiten; jede Prüfung ist bestanden oder unterschrieben.',
  '{open, plural, one {# check neither passes nor is} other {# checks neither pass nor are}} signed.':
    '{open, plural, one {# Prüfung ist} other {# Prüfungen sind}} weder bestanden noch unterschrieben.',
  'answer by name for checks of the bass string order that do not pass':
    'namentlich für Prüfungen der Basssaitenbestellung einstehen, die nicht bestanden sind',
  'as becket orders bass-checks prints it; may be given again':
    'wie becket orders bass-checks sie ausgibt; mehrmals möglich',
  'every check that is open': 'jede offene Prüfung',
  'who answers for it': 'wer dafür einsteht',
  'why it is right all the same': 'warum es trotzdem richtig ist',
  'Cannot sign nothing: name checks with --check, or give --all.':
    'Es gibt nichts zu unterschreiben: Prüfungen mit --check nennen oder --all angeben.',
  'Every check passes or is signed.': 'Jede Prüfung ist bestanden oder unterschrieben.',
  'draft the order of the bass strings, as they are now':
    'die Bestellung der Basssaiten entwerfen, wie sie jetzt sind',
  'who makes them': 'wer sie macht',
  'note that an order was sent': 'eintragen, dass eine Bestellung abgeschickt wurde',
  'note that the supplier confirmed it': 'eintragen, dass der Lieferant sie bestätigt hat',
  'note that it was cancelled': 'eintragen, dass sie storniert wurde',
  'its id, as becket orders list prints it': 'ihre Kennung, wie becket orders list sie ausgibt',
  'YYYY-MM-DD; today without it': 'JJJJ-MM-TT; ohne Angabe heute',
  'the day the supplier promised, YYYY-MM-DD': 'der Tag, den der Lieferant zugesagt hat, JJJJ-MM-TT',
  'note what came of an order, and what was measured of it; it goes on the shelf':
    'eintragen, was von einer Bestellung kam und was daran gemessen wurde; es kommt ins Lager',
  'its id': 'ihre Kennung',
  'all that is outstanding came': 'alles Ausstehende ist gekommen',
  "how much of a line came: '2=10'; may be given again":
    'wie viel von einer Zeile kam: „2=10“; mehrmals möglich',
  "a string that came: 'E2/1 core-diameter 1.05 mm', of {quantities}; may be given again":
    'eine Saite, die kam: „E2/1 core-diameter 1.05 mm“, aus {quantities}; mehrmals möglich',
  'take back a delivery that was noted by a slip, and what went on the shelf with it':
    'eine versehentlich eingetragene Lieferung zurücknehmen, und was mit ihr ins Lager kam',
  'its id, as becket --json orders list prints it': 'ihre Kennung, wie becket --json orders list sie ausgibt',
  'the strings of a bass order as they came: whether they may be strung':
    'die Saiten einer Bassbestellung, wie sie kamen: ob sie aufgezogen werden dürfen',
  '{check}: {sentence} Taken by {name}: {reason}': '{check}: {sentence} Hingenommen von {name}: {reason}',
  'Not measured: {what}.': 'Nicht gemessen: {what}.',
  'This set may be strung.': 'Dieser Satz darf aufgezogen werden.',
  'Do not string this set yet.': 'Diesen Satz noch nicht aufziehen.',
  'take a string as it came, by name and with a reason':
    'eine Saite hinnehmen, wie sie kam, namentlich und mit Grund',
  "as becket orders check prints it: 'received/E2/1/core-diameter'":
    'wie becket orders check es ausgibt: „received/E2/1/core-diameter“',
  'who takes it': 'wer sie hinnimmt',
  '{check} is taken by {name}.': '{check} ist von {name} hingenommen.',
  'Cannot find this order: an order of this job is needed, {id} was found. Look at becket orders list.':
    'Diese Bestellung ist nicht zu finden: Nötig ist eine Bestellung dieses Auftrags, gefunden wurde {id}. Siehe becket orders list.',
  'There is no order yet.': 'Es gibt noch keine Bestellung.',
  '{id}  {what}, {supplier}: {state}': '{id}  {what}, {supplier}: {state}',
  '{id}  {what}, {supplier}: {state}, promised for {day}':
    '{id}  {what}, {supplier}: {state}, zugesagt für den {day}',
  '[of an order] line': 'Zeile',
  ordered: 'bestellt',
  received: 'eingegangen',
  'price of one': 'Einzelpreis',
  "Cannot take the day '{text}': a day written YYYY-MM-DD is needed.":
    'Der Tag „{text}“ lässt sich nicht verwenden: Nötig ist ein Tag in der Form JJJJ-MM-TT.',
  "Cannot take the line '{text}': its number and how much came is needed, such as '2=10'.":
    'Die Zeile „{text}“ lässt sich nicht verwenden: Nötig sind ihre Nummer und wie viel kam, etwa „2=10“.',
  "Cannot take the reading '{text}': a string, a quantity and a length are needed, such as 'E2/1 core-diameter 1.05 mm'; quantities are {quantities}.":
    'Der Messwert „{text}“ lässt sich nicht verwenden: Nötig sind Saite, Größe und Länge, etwa „E2/1 core-diameter 1.05 mm“; Größen sind {quantities}.',
};
