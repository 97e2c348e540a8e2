import { type Language, type Message, message } from '@becket/core';
import type { Absence } from '@becket/journal';
import { memo, useRef } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import type { Observable } from '../../parts/observable.ts';
import { useWritten } from '../../parts/use-written.ts';
import type { ReadBack } from './record-state.ts';

interface Props extends ButtonsProps {
  /** Where the last value stands; it is read back from there as soon as it changes. */
  readonly view: Pick<Observable<{ readonly readBack: ReadBack | undefined }>, 'get' | 'subscribe'>;
}

interface ButtonsProps {
  readonly canUndo: boolean;
  readonly undoTitle: string | undefined;
  readonly onUndo: () => void;
  readonly onSay: (answer: Absence) => void;
}

const answers: readonly { answer: Absence; words: Message; key: string }[] = [
  { answer: 'unknown', words: message('Unknown'), key: '?' },
  { answer: 'none', words: message('None'), key: '-' },
  { answer: 'does not apply', words: message('Does not apply'), key: '/' },
];

/** Reads the last value back, large, and holds what can be done with one hand. */
export function ReadBackBar({ view, ...buttons }: Props) {
  const { say } = useLanguage();
  const bar = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLOutputElement>(null);
  const hint = useRef<HTMLSpanElement>(null);
  const lines = useRef<HTMLDivElement>(null);
  const title = useRef<HTMLSpanElement>(null);
  const value = useRef<HTMLSpanElement>(null);
  const also = useRef<HTMLSpanElement>(null);
  const written = useRef<{ readBack: ReadBack | undefined; say: Language['say'] }>(undefined);
  useWritten(() => {
    const { readBack } = view.get();
    // Much else changes in the view.
    if (written.current?.readBack === readBack && written.current?.say === say) return;
    written.current = { readBack, say };
    const isRefused = readBack?.is === 'not saved';
    bar.current!.dataset.is = readBack?.is ?? '';
    bar.current!.classList.toggle('refused', isRefused);
    // Busy until it is kept: it is seen at once, and spoken once.
    words.current!.setAttribute('aria-busy', String(readBack?.is === 'being kept'));
    hint.current!.hidden = readBack !== undefined;
    lines.current!.hidden = readBack === undefined;
    title.current!.textContent = readBack === undefined ? '' : titleInWords(readBack, say);
    value.current!.textContent = readBack?.value ?? '';
    value.current!.className = isRefused ? 'warn' : 'read-back-value';
    also.current!.textContent = readBack?.alsoAs === undefined ? '' : ` = ${readBack.alsoAs}`;
  }, view);
  return (
    <div ref={bar} className="read-back">
      <output ref={words} className="read-back-words" aria-live="polite">
        <span ref={hint} className="faint">
          {say('The last value is read back here.')}
        </span>
        <div ref={lines} className="read-back-lines">
          <span ref={title} className="read-back-title" />
          <span>
            <span ref={value} />
            <span ref={also} className="read-back-also" />
          </span>
        </div>
      </output>
      <ReadBackButtons {...buttons} />
    </div>
  );
}

function titleInWords({ is, title }: ReadBack, say: Language['say']): string {
  switch (is) {
    case 'being kept':
      return say('Being kept: {title}', { title });
    case 'saved':
      return say('Kept: {title}', { title });
    case 'taken back':
      return say('Taken back: {title}', { title });
    case 'not saved':
      return `▲ ${say('Not kept: {title}', { title })}`;
  }
}

/** Apart from the words, which change with every value; these stay as they were drawn. */
const ReadBackButtons = memo(function ReadBackButtons(props: ButtonsProps) {
  const { canUndo, undoTitle, onUndo, onSay } = props;
  const { say } = useLanguage();
  return (
    <div className="button-row">
      {answers.map(({ answer, words, key }) => (
        <button
          key={answer}
          type="button"
          className="button quiet"
          aria-label={say(words)}
          // The cell keeps the focus, so that the answer belongs to it.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => onSay(answer)}
        >
          {say(words)} <kbd>{key}</kbd>
        </button>
      ))}
      <button
        type="button"
        className="button"
        // Not disabled: it would let go of the focus with the last step that is taken back.
        aria-disabled={!canUndo}
        aria-keyshortcuts="Control+Z"
        onClick={() => {
          if (canUndo) onUndo();
        }}
        aria-label={undoTitle === undefined ? say('Undo') : say('Undo {title}', { title: undoTitle })}
      >
        {say('Undo')} <kbd>{say('Ctrl Z')}</kbd>
      </button>
    </div>
  );
});
