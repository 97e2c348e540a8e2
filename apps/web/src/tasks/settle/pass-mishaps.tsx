import { type Message, message, noteName, parseNote } from '@becket/core';
import { mishaps, type Pass } from '@becket/journal';
import { recordMishap } from '@becket/tasks';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { Mishaps, type MishapTyped } from '../../piano/mishaps.tsx';

type Mishap = (typeof mishaps)[number];

const mishapWords: Readonly<Record<Mishap, Message>> = {
  broke: message('broke'),
  slipped: message('slipped'),
  other: message('something else'),
};

const strings = ['not said', '1', '2', '3'] as const;

/** What broke or slipped in a pass. */
export function PassMishaps({ pass }: { pass: Pass }) {
  const { desk } = useDesk();
  const language = useLanguage();
  const { say } = language;

  function placeOf({ key, string }: Pass['mishaps'][number]): string {
    if (key === undefined) return say('whole piano');
    return string === undefined
      ? noteName(key)
      : say('{note}, string {string}', { note: noteName(key), string });
  }

  async function keep(typed: MishapTyped<Mishap, (typeof strings)[number]>): Promise<void> {
    const { what, string, words } = typed;
    const key = typed.note === '' ? undefined : parseNote(typed.note, undefined, language);
    await desk.runHere((context, id) =>
      recordMishap(context, id, {
        passBegun: pass.entry,
        what,
        ...(key === undefined ? {} : { key }),
        ...(key === undefined || string === 'not said' ? {} : { string: Number(string) as 1 | 2 | 3 }),
        ...(words === '' ? {} : { note: words }),
      }),
    );
  }

  return (
    <Mishaps
      title={say('A string broke or slipped')}
      titleWithCount={say('Broke or slipped: {count}', { count: pass.mishaps.length })}
      listLabel={say('What broke or slipped in this pass')}
      kept={pass.mishaps.map((mishap) => ({
        entry: mishap.entry,
        place: placeOf(mishap),
        told: `${say(mishapWords[mishap.what])}${mishap.note === undefined ? '' : ` (${mishap.note})`}`,
      }))}
      first="broke"
      whats={mishaps.map((value) => ({ value, words: say(mishapWords[value]) }))}
      strings={strings.map((value) => ({
        value,
        words: value === 'not said' ? say('not said') : value,
      }))}
      start={{ note: '', string: 'not said' }}
      onKeep={keep}
    />
  );
}
