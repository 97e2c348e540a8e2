import { type Message, message, noteName, parseNote } from '@becket/core';
import { type Stringing, type StringingMishap, type StringPlace, stringingMishaps } from '@becket/journal';
import { noteStringingMishap } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { Mishaps, type MishapTyped } from '../../piano/mishaps.tsx';
import { stringsText } from './wire-text.ts';

const mishapWords: Readonly<Record<StringingMishap, Message>> = {
  broke: message('broke'),
  slipped: message('slipped'),
  kinked: message('kinked'),
  'wrong wire': message('wrong wire'),
  other: message('something else'),
};

const strings = ['1', '2', '3'] as const;
type Which = (typeof strings)[number];

interface Props {
  readonly stringing: Stringing;
  /** The string that the form begins with: of the wire that went on last. */
  readonly suggested: StringPlace | undefined;
}

/** What went wrong while stringing, and whether the wire came off. */
export function StringingMishaps({ stringing: { mishaps }, suggested }: Props) {
  const { desk } = useDesk();
  const language = useLanguage();
  const { say } = language;
  const [isOff, setOff] = useState<'off' | 'on'>('off');

  async function keep({ what, note, string, words }: MishapTyped<StringingMishap, Which>): Promise<void> {
    const key = parseNote(note, undefined, language);
    await desk.runHere((context, id) =>
      noteStringingMishap(context, id, {
        what,
        strings: [{ key, string: Number(string) as 1 | 2 | 3 }],
        isOff: isOff === 'off',
        ...(words === '' ? {} : { note: words }),
      }),
    );
  }

  return (
    <Mishaps
      title={say('Something went wrong with a wire')}
      titleWithCount={say('Went wrong: {count}', { count: mishaps.length })}
      listLabel={say('What went wrong while stringing')}
      kept={mishaps.map(({ entry, what, strings: own, isOff: cameOff, note }) => ({
        entry,
        place: stringsText({
          strings: own.map((one) => ({ ...one, note: noteName(one.key), section: undefined })),
        }),
        told: `${say(mishapWords[what])}, ${cameOff ? say('came off') : say('stays on')}${note === undefined ? '' : ` (${note})`}`,
      }))}
      first="broke"
      whats={stringingMishaps.map((value) => ({ value, words: say(mishapWords[value]) }))}
      strings={strings.map((value) => ({ value, words: value }))}
      start={{
        note: suggested === undefined ? '' : noteName(suggested.key),
        string: String(suggested?.string ?? 1) as Which,
      }}
      onKeep={keep}
    >
      <Choice
        label={say('The wire')}
        value={isOff}
        onChange={setOff}
        options={[
          { value: 'off', words: say('came off: it is strung again') },
          { value: 'on', words: say('stays on') },
        ]}
      />
    </Mishaps>
  );
}
