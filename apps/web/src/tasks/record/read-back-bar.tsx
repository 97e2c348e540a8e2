import { type Message, message } from '@becket/core';
import type { Absence } from '@becket/journal';
import { memo } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import type { ReadBack } from './record-state.ts';

interface Props {
  readonly readBack: ReadBack | undefined;
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
export function ReadBackBar({ readBack, canUndo, undoTitle, onUndo, onSay }: Props) {
  const { say } = useLanguage();
  return (
    <div className={readBack?.is === 'not saved' ? 'read-back refused' : 'read-back'} data-is={readBack?.is}>
      {/* Busy until it is kept: it is seen at once, and spoken once. */}
      <output className="read-back-words" aria-live="polite" aria-busy={readBack?.is === 'being kept'}>
        {readBack === undefined ? (
          <span className="faint">{say('The last value is read back here.')}</span>
        ) : (
          <div className="read-back-lines">
            <span className="read-back-title">
              {readBack.is === 'being kept'
                ? say('Being kept: {title}', { title: readBack.title })
                : readBack.is === 'saved'
                  ? say('Kept: {title}', { title: readBack.title })
                  : readBack.is === 'taken back'
                    ? say('Taken back: {title}', { title: readBack.title })
                    : `▲ ${say('Not kept: {title}', { title: readBack.title })}`}
            </span>
            <span>
              <span className={readBack.is === 'not saved' ? 'warn' : 'read-back-value'}>
                {readBack.value}
              </span>
              {readBack.alsoAs !== undefined && <span className="read-back-also"> = {readBack.alsoAs}</span>}
            </span>
          </div>
        )}
      </output>
      <ReadBackButtons canUndo={canUndo} undoTitle={undoTitle} onUndo={onUndo} onSay={onSay} />
    </div>
  );
}

/** Apart from the words, which change with every value; these stay as they were drawn. */
const ReadBackButtons = memo(function ReadBackButtons(props: Omit<Props, 'readBack'>) {
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
