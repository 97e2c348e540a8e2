import { type Language, type Message, message } from '@becket/core';
import { Help, type HelpConfiguration } from 'commander';

/** Titles above the parts of a help, as the parser writes them. */
const titles: Readonly<Record<string, Message>> = {
  'Usage:': message('Usage:'),
  'Arguments:': message('Arguments:'),
  'Options:': message('Options:'),
  'Commands:': message('Commands:'),
};

/** What the parser writes into a help by itself, in the language of the command line. */
export function helpIn({ say }: Language): HelpConfiguration {
  const said = (text: string) =>
    text
      .replace('[options]', `[${say('options')}]`)
      .replace('[command]', `[${say('command')}]`)
      .replace('(choices: ', `(${say('choices')}: `)
      .replace('default: ', `${say('[of an option] default')}: `);
  const { commandUsage, optionDescription, subcommandTerm } = Help.prototype;
  return {
    styleTitle: (title) => (titles[title] === undefined ? title : say(titles[title])),
    commandUsage(this: Help, command) {
      return said(commandUsage.call(this, command));
    },
    subcommandTerm(this: Help, command) {
      return said(subcommandTerm.call(this, command));
    },
    optionDescription(this: Help, option) {
      return said(optionDescription.call(this, option));
    },
  };
}

/** How the parser refuses a command line, with the same as a message whose values are the named groups. */
const refusals: readonly (readonly [RegExp, Message])[] = [
  [/^error: unknown option '(?<what>.*?)'/, message("error: unknown option '{what}'")],
  [/^error: unknown command '(?<what>.*?)'/, message("error: unknown command '{what}'")],
  [/^error: missing required argument '(?<what>.*?)'/, message("error: missing required argument '{what}'")],
  [
    /^error: required option '(?<what>.*?)' not specified/,
    message("error: required option '{what}' not specified"),
  ],
  [/^error: option '(?<what>.*?)' argument missing/, message("error: option '{what}' argument missing")],
  [
    /^error: option '(?<what>.*?)' argument '(?<found>.*?)' is invalid\./,
    message("error: option '{what}' argument '{found}' is invalid."),
  ],
  [
    /^error: too many arguments for '(?<what>.*?)'\. Expected (?<expected>\d+) arguments? but got (?<found>\d+)\./,
    message(
      "error: too many arguments for '{what}'. Expected {expected, plural, one {# argument} other {# arguments}} but got {found}.",
    ),
  ],
  [/Allowed choices are (?<choices>.*)\.$/m, message('Allowed choices are {choices}.')],
  [/\(Did you mean one of (?<similar>.*)\?\)/, message('(Did you mean one of {similar}?)')],
  [/\(Did you mean (?!one of )(?<similar>.*)\?\)/, message('(Did you mean {similar}?)')],
];

/** A refusal of the parser in the language of the command line; what is none of those it knows stays as it is. */
export const refusalIn = (text: string, { say }: Language): string =>
  refusals.reduce(
    (sofar, [pattern, words]) =>
      sofar.replace(pattern, (...found) => say(words, found.at(-1) as Record<string, string>)),
    text,
  );
