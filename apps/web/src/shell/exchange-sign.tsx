import { useState } from 'react';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { Sheet } from '../parts/dialog.tsx';
import { useObservable } from '../parts/observable.ts';
import { exchangeWords } from './exchange-words.ts';

/** What has not left this device, always in sight. */
export function ExchangeSign() {
  const { exchange } = useDevice();
  const state = useObservable(exchange.state);
  const { device } = useSettings();
  const [isOpen, setOpen] = useState(false);
  const words = exchangeWords(state);
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
      <Sheet title="This device and the server" isOpen={isOpen} onClose={() => setOpen(false)}>
        <p>{words.long}</p>
        <dl className="facts">
          <dt>This device</dt>
          <dd>{device}</dd>
          <dt>Last exchange</dt>
          <dd>{state.lastAt === undefined ? 'none since this page was loaded' : timeText(state.lastAt)}</dd>
          <dt>Only on this device</dt>
          <dd>
            {state.unsent} {state.unsent === 1 ? 'entry' : 'entries'}
          </dd>
        </dl>
        <div className="button-row">
          <button type="button" className="button" onClick={exchange.wake}>
            Try now
          </button>
          <button type="button" className="button quiet" onClick={() => setOpen(false)}>
            Close
          </button>
        </div>
      </Sheet>
    </>
  );
}

// Made once: making one takes longer than all the rest of this sign, which changes with every entry.
const clock = new Intl.DateTimeFormat([], { hour: '2-digit', minute: '2-digit', second: '2-digit' });
const timeText = (at: string) => clock.format(new Date(at));
