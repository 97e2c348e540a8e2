import { noteName } from '@becket/core';
import { type PassageName, passages as passageNames } from '@becket/tasks';
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { type SoundAnswer, soundAway } from '../../worker/sound-away.ts';
import { pairOf, scaleChoices, standingPair } from './compare-state.ts';
import {
  breakChoices,
  type HearChoice,
  middleKey,
  passagesToHear,
  spreads,
  startingChoice,
} from './hear-state.ts';
import { NoStringYet } from './no-string-yet.tsx';
import { scaleName } from './scale-words.ts';
import { type SoundPlayer, soundPlayer } from './sound-player.ts';
import { useFigures } from './use-analysed.ts';

let sharedPlayer: SoundPlayer | undefined;
/** One for the whole program: a browser allows only a few. */
const player = (): SoundPlayer => {
  sharedPlayer ??= soundPlayer();
  return sharedPlayer;
};

/** The change heard before it is bought: one passage, two scales, one level. */
export function HearPlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const [selected, select] = useSelectedKey();
  const pair = pairOf(desk.id);
  const { before, after } = standingPair(job, useObservable(pair), language);
  const scales = [useFigures(job, before), useFigures(job, after)] as const;
  const [choice, setChoice] = useState<HearChoice>(startingChoice);
  const choices = scaleChoices(job, language);
  const breaks = breakChoices(scales[0]);
  const isAcross = choice.passage === 'thirds across the break';
  // Another note looked at on the map changes nothing of a passage that is laid over the break.
  const asked = isAcross ? undefined : selected;
  const { passages, leftOut } = useMemo(
    () => passagesToHear(job, [scales[0], scales[1]], choice, asked, language),
    [job, scales[0], scales[1], choice, asked, language],
  );
  const { hear, stop, playing, says } = useHearing(passages);
  const isSame = before === after;
  const key = selected ?? middleKey(job);

  if (job.piano === undefined || scales[0].notes.length === 0) return <NoStringYet title={say('Hear')} />;

  function onKeyDown(event: KeyboardEvent): void {
    const isTyping = (event.target as HTMLElement).closest('input, select, textarea') !== null;
    if (isTyping || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'a') hear(0);
    else if (event.key === 'b' && !isSame) hear(1);
    else if (event.key === 's' || event.key === 'Escape') stop();
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are a second way to the buttons within
    <div onKeyDown={onKeyDown}>
      <h2>{say('Hear')}</h2>
      <p className="notice">
        {say(
          'Turn the volume down before the first sound, above all with headphones; then up until it is pleasant. Both scales play at the same level.',
        )}
      </p>
      <div className="fields">
        <SelectField
          label="A"
          value={before}
          onChange={(value) => pair.update({ before: value })}
          options={choices}
        />
        <SelectField
          label="B"
          value={after}
          onChange={(value) => pair.update({ after: value })}
          options={choices}
        />
      </div>
      <Choice<PassageName>
        label={say('What to hear')}
        value={choice.passage}
        onChange={(passage) => setChoice({ ...choice, passage })}
        options={passageNames.map((value) => ({ value, words: say(value) }))}
      />
      {isAcross ? (
        breaks.length > 0 && (
          <Choice
            label={say('Which break')}
            value={String(choice.breakKey ?? breaks[0]!.value)}
            onChange={(value) => setChoice({ ...choice, breakKey: Number(value) })}
            options={breaks}
          />
        )
      ) : (
        <div className="button-row note-steps">
          <button
            type="button"
            className="button"
            aria-label={say('One note lower')}
            onClick={() => select(Math.max(job.piano!.firstKey, key - 1))}
          >
            −
          </button>
          <output aria-label={say('Note')}>{noteName(key)}</output>
          <button
            type="button"
            className="button"
            aria-label={say('One note higher')}
            onClick={() => select(Math.min(job.piano!.lastKey, key + 1))}
          >
            +
          </button>
          <span className="faint">{say('or tap the map of the piano')}</span>
        </div>
      )}
      {choice.passage !== 'one string' && (
        <Choice<HearChoice['spread']>
          label={say('How still are the unisons?')}
          value={choice.spread}
          onChange={(spread) => setChoice({ ...choice, spread })}
          options={(Object.keys(spreads) as HearChoice['spread'][]).map((value) => ({
            value,
            words: say(spreads[value].words),
          }))}
        />
      )}
      <div className="button-row hear-row">
        {scales.map((scale, which) => (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: A and B are places
            key={which}
            type="button"
            className={playing === which ? 'button strong' : 'button'}
            aria-pressed={playing === which}
            disabled={passages.length === 0 || (which === 1 && isSame)}
            onClick={() => hear(which)}
          >
            <strong>{which === 0 ? 'A' : 'B'}</strong> {scaleName(scale.name, language)}
          </button>
        ))}
        <button type="button" className="button" onClick={stop}>
          {say('Stop')}
        </button>
      </div>
      <p role="status" className="faint">
        {says}
      </p>
      {leftOut !== undefined && <p>{leftOut}</p>}
      {isSame && <p className="faint">{say('Choose another scale for B to compare, or make a proposal.')}</p>}
      <p className="faint">
        {sayNodes(
          'Keys: {a} and {b} play, {s} stops. What is heard is the strings by themselves, from their exact partials, tuned by each scale’s own stretch. Strike and decay are plausible and alike for both; soundboard and hammers are not in it, so it tells two scales apart and does not say how the piano will sound.',
          { a: <kbd>A</kbd>, b: <kbd>B</kbd>, s: <kbd>S</kbd> },
        )}
      </p>
    </div>
  );
}

type Heard = ReturnType<typeof passagesToHear>['passages'];

/** The sounds of the passages, made once they are wanted and kept until the passages change. */
function useHearing(passages: Heard) {
  const language = useLanguage();
  const { say } = language;
  const [playing, setPlaying] = useState<number>();
  const [says, setSays] = useState('');
  const kept = useRef<{ of: Heard; answer: SoundAnswer } | undefined>(undefined);
  const forget = useRef<(() => void) | undefined>(undefined);

  const unwatch = useRef<(() => void) | undefined>(undefined);

  useEffect(
    () => () => {
      forget.current?.();
      unwatch.current?.();
      sharedPlayer?.stop();
    },
    [],
  );
  useEffect(() => {
    // Another passage is another sound: what is playing no longer belongs to what is shown.
    if (kept.current !== undefined && kept.current.of !== passages) sharedPlayer?.stop();
  }, [passages]);

  function play(which: number, answer: SoundAnswer): void {
    if (answer.sounds === undefined) {
      setSays(say('Could not make this sound: {problem}', { problem: answer.problem }));
      return;
    }
    player().play(which, answer.sounds[which]!);
    setSays('');
  }

  function hear(which: number): void {
    if (passages.length === 0) return;
    const sound = player();
    unwatch.current ??= sound.playing.subscribe(() => setPlaying(sound.playing.get()));
    forget.current?.();
    if (kept.current?.of === passages) {
      play(which, kept.current.answer);
      return;
    }
    setSays(say('Making the sound …'));
    forget.current = soundAway(
      { passages: passages.map(({ notes }) => notes), sampleRate: sound.sampleRate },
      (answer) => {
        kept.current = { of: passages, answer };
        play(which, answer);
      },
      language,
    );
  }

  function stop(): void {
    forget.current?.();
    setSays('');
    sharedPlayer?.stop();
  }

  return { hear, stop, playing, says };
}
