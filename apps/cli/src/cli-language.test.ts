import { english, type Language } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { cliLanguage, localeAsked } from './cli-language.ts';
import { refusalIn } from './parser-words.ts';
import { becketProgram } from './program.ts';

describe('localeAsked()', () => {
  it.each([
    [['jobs'], { LANG: 'de_DE.UTF-8' }, 'de-DE'],
    [['jobs'], { LC_ALL: 'de_CH@euro', LANG: 'en_US.UTF-8' }, 'de-CH'],
    // Set but empty is not set.
    [['jobs'], { LC_ALL: '', LC_MESSAGES: 'de', LANG: 'en_GB' }, 'de'],
    [['jobs'], { LANG: 'fr_FR.UTF-8' }, undefined],
    [['jobs'], { LC_ALL: 'C', LANG: 'de_DE.UTF-8' }, undefined],
    [['jobs'], {}, undefined],
    [['--json', 'jobs'], { LANG: 'de_DE.UTF-8' }, undefined],
    [['--json', 'jobs', '--language', 'de-AT'], {}, 'de-AT'],
    [['jobs', '--language=en'], { LANG: 'de_DE.UTF-8' }, 'en'],
  ])('takes %j with %j for %j', (args, env, locale) => {
    expect(localeAsked(args, env)).toBe(locale);
  });
});

describe('the language of the command line', () => {
  it('is refused when it is none of ours, in one sentence', async () => {
    await expect(cliLanguage('fr')).rejects.toThrow(/^Cannot use the language 'fr'/);
  });

  it('says everything in a help: what it is for, every argument and every option', async () => {
    const bracketing: Language = {
      ...english,
      say: (text: string, values?: Parameters<Language['say']>[1]) =>
        `⟦${english.say(text as never, values)}⟧`,
    };
    const program = await becketProgram([], bracketing);
    const all = [program, ...program.commands, ...program.commands.flatMap(({ commands }) => commands)];
    for (const command of all) {
      const said = [command, ...command.options, ...command.registeredArguments].map((one) =>
        typeof one.description === 'function' ? one.description() : one.description,
      );
      for (const text of said) expect(text, command.name()).toMatch(/^⟦.+⟧$/s);
      const help = command.helpInformation();
      expect(help).toMatch(/^⟦Usage:⟧ becket/);
      // Whatever the parser adds by itself.
      const rest = help.replace(/⟦[^⟧]*⟧/gs, ' ');
      expect(rest, command.name()).not.toMatch(/default|choices|Options|Commands|Arguments|display/);
    }
  });

  it('turns what the parser refuses into German, and leaves it alone in English', async () => {
    const german = await cliLanguage('de-DE');
    const refused = "error: unknown option '--paperr'\n(Did you mean --paper?)\n";
    expect(refusalIn(refused, english)).toBe(refused);
    expect(refusalIn(refused, german)).toBe('Fehler: unbekannte Option „--paperr“\n(Vielleicht --paper?)\n');
    const tooMany = "error: too many arguments for 'jobs'. Expected 0 arguments but got 2.\n";
    expect(refusalIn(tooMany, english)).toBe(tooMany);
    expect(refusalIn(tooMany, german)).toBe(
      'Fehler: Zu viele Angaben bei „jobs“: keine erwartet, 2 gefunden.\n',
    );
  });
});
