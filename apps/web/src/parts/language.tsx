import { english, type Language, type MessageValues, type Sayable } from '@becket/core';
import { createContext, Fragment, type ReactNode, useContext, useMemo } from 'react';

/** The language of whatever is drawn below; English until a device says otherwise. */
export const LanguageContext = createContext<Language>(english);

/** A language with what only a screen needs: pieces of a screen inside a sentence, and the clock of this device. */
export interface ScreenLanguage extends Language {
  /** A message whose braces may hold links, buttons and emphasis. */
  readonly sayNodes: <const Text extends string>(
    text: Sayable<Text>,
    values: Readonly<Record<string, ReactNode>>,
  ) => ReactNode;
  /** A day by this device's time zone: '3 Mar 2026'. */
  readonly localDay: (at: string) => string;
  /** Day and minute by this device's time zone: '3 Mar 2026, 11:05'. */
  readonly localMoment: (at: string) => string;
}

/** What a view says, in the language of this device. */
export function useLanguage(): ScreenLanguage {
  const language = useContext(LanguageContext);
  return useMemo(() => screenLanguage(language), [language]);
}

// Characters of the private use area: no message and no user has them, and they mark where a node goes.
const [open, close] = ['\uE000', '\uE001'];
const marked = new RegExp(`${open}([^${close}]*)${close}`);

export function screenLanguage(language: Language): ScreenLanguage {
  const days = new Intl.DateTimeFormat(language.locale, { dateStyle: 'medium' });
  const moments = new Intl.DateTimeFormat(language.locale, { dateStyle: 'medium', timeStyle: 'short' });
  return {
    ...language,
    sayNodes(text, values) {
      const isText = (value: ReactNode) => typeof value === 'string' || typeof value === 'number';
      const texts = Object.entries(values).map(([name, value]) => [
        name,
        isText(value) ? value : `${open}${name}${close}`,
      ]);
      const put = language.say as (text: string, values: MessageValues) => string;
      // Odd pieces are the names between the marks. A node may stand at another place in each language.
      return put(text, Object.fromEntries(texts) as MessageValues)
        .split(marked)
        .map((piece, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of one sentence have no other name
          <Fragment key={index}>{index % 2 === 0 ? piece : values[piece]}</Fragment>
        ));
    },
    localDay: (at) => days.format(new Date(at)),
    localMoment: (at) => moments.format(new Date(at)),
  };
}
