import type { Catalogue } from '@becket/core';
import { german as packages } from '@becket/tasks/german';
import { german as commands } from './commands/german.ts';

/** All messages of the command line and of what is under it in German. */
export const german: Catalogue = {
  ...packages,
  ...commands,
  // Every command
  'the working record and the string science for restringing a piano':
    'das Arbeitsbuch und die Saitenkunde für das Neubeziehen eines Klaviers',
  'display help for command': 'diese Hilfe zeigen',
  'folder of the store; BECKET_DATA without it': 'Ordner des Speichers; ohne Angabe BECKET_DATA',
  'the result as JSON': 'das Ergebnis als JSON',
  'who is doing this; your name on this computer without it':
    'wer das tut; ohne Angabe Ihr Name auf diesem Rechner',
  'what is said and written: en or de, with a country where its marks matter: de-AT; that of this computer without it, English with --json':
    'Sprache von allem, was gesagt und geschrieben wird: en oder de, mit einem Land, wo es auf dessen Zeichen ankommt: de-AT; ohne Angabe die dieses Rechners, mit --json Englisch',
  'Try becket --help.': 'Siehe becket --help.',
  'this computer': 'dieser Rechner',
  'the file': 'die Datei',
  // What the parser writes
  'Usage:': 'Aufruf:',
  'Arguments:': 'Angaben:',
  'Options:': 'Optionen:',
  'Commands:': 'Befehle:',
  options: 'Optionen',
  command: 'Befehl',
  choices: 'möglich',
  '[of an option] default': 'Vorgabe',
  "error: unknown option '{what}'": 'Fehler: unbekannte Option „{what}“',
  "error: unknown command '{what}'": 'Fehler: unbekannter Befehl „{what}“',
  "error: missing required argument '{what}'": 'Fehler: Die Angabe „{what}“ fehlt.',
  "error: required option '{what}' not specified": 'Fehler: Die Option „{what}“ muss angegeben werden.',
  "error: option '{what}' argument missing": 'Fehler: Der Option „{what}“ fehlt ihr Wert.',
  "error: option '{what}' argument '{found}' is invalid.":
    'Fehler: Die Option „{what}“ nimmt „{found}“ nicht an.',
  "error: too many arguments for '{what}'. Expected {expected, plural, one {# argument} other {# arguments}} but got {found}.":
    'Fehler: Zu viele Angaben bei „{what}“: {expected, plural, =0 {keine} one {eine} other {#}} erwartet, {found} gefunden.',
  'Allowed choices are {choices}.': 'Möglich: {choices}.',
  '(Did you mean one of {similar}?)': '(Vielleicht eines davon: {similar}?)',
  '(Did you mean {similar}?)': '(Vielleicht {similar}?)',
  // What can go wrong everywhere
  'Cannot find any job in {folder}: there is no store in that folder. Name another with --data, or open a job with becket new.':
    'In {folder} ist kein Auftrag zu finden: In diesem Ordner gibt es keinen Speicher. Mit --data einen anderen nennen oder mit becket new einen Auftrag anlegen.',
  'Cannot read {path}: there is no such file. Check its name and folder.':
    '{path} lässt sich nicht lesen: Es gibt keine solche Datei. Name und Ordner prüfen.',
  'Cannot read {path}: JSON is needed, but {problem}. Mend the file and try again.':
    '{path} lässt sich nicht lesen: JSON ist nötig, aber: {problem}. Die Datei berichtigen und noch einmal versuchen.',
  'Becket stopped at a fault of its own; nothing was stored by this command. {words}':
    'Becket ist an einem eigenen Fehler stehen geblieben; dieser Befehl hat nichts gespeichert. {words}',
};
