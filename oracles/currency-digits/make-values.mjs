/*
 * Digits after the point of every currency, read from list one of ISO 4217 as the maintenance agency publishes it.
 *
 * Run:  node make-values.mjs iso-4217-list-one.xml > values.json
 *
 * The list as XML is published with the standard; a copy of it lies in the npm package currency-codes 2.2.0 (MIT).
 * 'N.A.' stands where a minor unit does not apply (gold, test codes).
 */
import { readFileSync } from 'node:fs';

const xml = readFileSync(process.argv[2], 'utf8');
const digits = {};
for (const [, entry] of xml.matchAll(/<CcyNtry>([\s\S]*?)<\/CcyNtry>/g)) {
  const code = /<Ccy>(.*?)<\/Ccy>/.exec(entry)?.[1];
  if (code !== undefined) digits[code] = /<CcyMnrUnts>(.*?)<\/CcyMnrUnts>/.exec(entry)[1];
}
const published = /Pblshd="(.*?)"/.exec(xml)[1];
const sorted = Object.fromEntries(Object.entries(digits).sort(([a], [b]) => (a < b ? -1 : 1)));
process.stdout.write(
  `${JSON.stringify({ source: `ISO 4217 list one, published ${published}`, digits: sorted }, null, 1)}\n`,
);
