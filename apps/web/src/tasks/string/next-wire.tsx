import { metres } from '@becket/core';
import type { WireToString } from '@becket/tasks';
import { type FormEvent, useId, useState } from 'react';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { TextField } from '../../parts/text-field.tsx';
import { readTypedNumber } from '../../parts/typed-number.ts';
import { cutText, joinedWords, pinsText, sizeText, stringsText } from './wire-text.ts';

interface Props {
  readonly wire: WireToString;
  /** With the diameter that went on [m], undefined for a wound string; says whether it was kept. */
  readonly onPutOn: (diameter_m: number | undefined) => Promise<boolean>;
  readonly onLeaveOut: () => void;
}

/** The wire that goes on next, to be read from the far side of the piano. */
export function NextWire({ wire, onPutOn, onLeaveOut }: Props) {
  const { unit } = useSettings();
  const language = useLanguage();
  const { say } = language;
  const heading = useId();
  const cut = cutText(wire, unit, language);
  const pins = pinsText(wire, language);
  return (
    <section className="next-wire" aria-labelledby={heading}>
      <h3 id={heading}>{stringsText(wire)}</h3>
      <p className="next-wire-size">{sizeText(wire, unit, language)}</p>
      <dl>
        {cut !== undefined && (
          <div>
            <dt>{say('[of a wire] Cut')}</dt>
            <dd className="next-wire-cut">{cut}</dd>
          </div>
        )}
        <div>
          <dt>{say('[of a wire] How it lies')}</dt>
          <dd>{say(joinedWords[wire.joined])}</dd>
        </div>
        <div>
          <dt>{say('New pins')}</dt>
          <dd>{pins ?? say('not chosen')}</dd>
        </div>
      </dl>
      {wire.isAgain && <p className="warn">▲ {say('Once more: a wire came off here.')}</p>}
      {wire.remarks.length > 0 && (
        <p className="faint">
          {say('Its length rests on what was not read here: {remarks}.', {
            remarks: language.list(wire.remarks),
          })}
        </p>
      )}
      <div className="button-row">
        <button
          type="button"
          className="button strong next-wire-on"
          ref={focusQuietly}
          onKeyDown={(event) => {
            if (event.repeat) event.preventDefault();
          }}
          onClick={(event) => {
            // The second press of a double click finds the button of the next wire in the same place.
            if (event.detail <= 1) void onPutOn(wire.diameter);
          }}
        >
          {say('It is on')}
        </button>
        <button type="button" className="button" onClick={onLeaveOut}>
          {say('Leave it out for now')}
        </button>
      </div>
      {wire.diameter !== undefined && <OtherSize onPutOn={onPutOn} />}
    </section>
  );
}

/**
 * The one thing to do here, wire after wire, with one key; what lies above, the caution, stays in sight. Whoever is elsewhere
 * on the page, on the plan for one, keeps the focus there.
 */
function focusQuietly(button: HTMLButtonElement | null): void {
  const { activeElement } = document;
  const isElsewhere =
    activeElement !== null &&
    activeElement !== document.body &&
    button?.closest('.task')?.contains(activeElement) !== true;
  if (!isElsewhere) button?.focus({ preventScroll: true });
}

/** Another size went on than was planned: it is noted as it is, and shown beside the plan. */
function OtherSize({ onPutOn }: Pick<Props, 'onPutOn'>) {
  const { unit } = useSettings();
  const language = useLanguage();
  const { say } = language;
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string>();

  function keep(event: FormEvent): void {
    event.preventDefault();
    const typed = readTypedNumber(text, language);
    const used = typed.is === 'number' ? (typed.unit ?? unit) : unit;
    const diameter = typed.is === 'number' ? typed.value * (used === 'in' ? 0.0254 : 0.001) : undefined;
    if (diameter === undefined || (used !== 'in' && used !== 'mm') || diameter < 0.0003 || diameter > 0.004) {
      setProblem(
        say(
          'Cannot keep this size: a diameter from {low} to {high} is needed, ‘{found}’ was found. Read it off the coil or the micrometer.',
          {
            low: lengthText(metres(0.0003), unit, 'diameter', language),
            high: lengthText(metres(0.004), unit, 'diameter', language),
            found: text,
          },
        ),
      );
      return;
    }
    setProblem(undefined);
    void onPutOn(diameter);
  }

  return (
    <details className="next-wire-other">
      <summary>{say('Another size went on')}</summary>
      <form className="row-form" aria-label={say('Another size went on')} onSubmit={keep}>
        <TextField
          label={say('Diameter of the wire ({unit})', { unit })}
          isNumber
          value={text}
          onChange={setText}
          problem={problem}
          maxLength={12}
        />
        <button type="submit" className="button">
          {say('This one is on')}
        </button>
      </form>
    </details>
  );
}
