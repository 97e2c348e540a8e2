import { useState } from 'react';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { Sheet } from '../parts/dialog.tsx';
import { useLanguage } from '../parts/language.tsx';
import { useObservable } from '../parts/observable.ts';
import { exchangeWords } from './exchange-words.ts';

/** What has not left this device, always in sight. */
export function ExchangeSign() {
  const language = useLanguage();
  const { say } = language;
  const { exchange } = useDevice();
  const state = useObservable(exchange.state);
  const { device } = useSettings();
  const [isOpen, setOpen] = useState(false);
  const words = exchangeWords(state, language);
  return (
    <>
      <button
        type="button"
        className="button quiet sign"
        onClick={() => setOpen(true)}
        data-mark={words.mark}
      >
        <span aria-hidden="true">{words.mark}</span> {words.short}
      </button>
      <Sheet title={say('This device and the server')} isOpen={isOpen} onClose={() => setOpen(false)}>
        <p>{words.long}</p>
        <dl className="facts">
          <dt>{say('This device')}</dt>
          <dd>{device}</dd>
          <dt>{say('Last exchange')}</dt>
          <dd>
            {state.lastAt === undefined ? say('none since this page was loaded') : timeText(state.lastAt)}
          </dd>
          <dt>{say('Only on this device')}</dt>
          <dd>{say('{count, plural, one {# entry} other {# entries}}', { count: state.unsent })}</dd>
        </dl>
        <div className="button-row">
          <button type="button" className="button" onClick={exchange.wake}>
            {say('Try now')}
          </button>
          <button type="button" className="button quiet" onClick={() => setOpen(false)}>
            {say('Close')}
          </button>
        </div>
      </Sheet>
    </>
  );
}

// Made once: making one takes longer than all the rest of this sign, which changes with every entry.
const clock = new Intl.DateTimeFormat([], { hour: '2-digit', minute: '2-digit', second: '2-digit' });
const timeText = (at: string) => clock.format(new Date(at));
