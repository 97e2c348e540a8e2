import { paperSizeOf } from '@becket/core';
import './papers.css';
import type { PaperFormat, PaperName } from '@becket/tasks';
import { lazy, Suspense, useId, useState } from 'react';
import { isForThisComputerAlone, jobAddress } from '../desk/job-address.ts';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDesk } from '../desk/use-desk.ts';
import { useSettings } from '../desk/use-device.ts';
import { Choice } from '../parts/choice.tsx';
import { useLanguage } from '../parts/language.tsx';
import { LaterFilesSign } from '../parts/later-files-sign.tsx';
import { saveFile } from '../parts/save-file.ts';
import { PaperStopped, papers } from '../worker/paper-away.ts';

const PaperPreview = lazy(() =>
  import('./paper-preview.tsx').then(({ PaperPreview: view }) => ({ default: view })),
);

export interface PaperOffer {
  readonly paper: PaperName;
  readonly words: string;
  /** Whom it is for, and what to mind. */
  readonly says?: string;
}

interface Props {
  readonly offers: readonly PaperOffer[];
  /** Of its heading. */
  readonly level?: 2 | 3;
}

/** Papers of the open job, made on this device: to look at, to print, to hand on, and as CSV for machines. */
export function Papers({ offers, level = 2 }: Props) {
  const { desk } = useDesk();
  const { unit } = useSettings();
  const language = useLanguage();
  const { say, locale } = language;
  const heading = useId();
  const [size, setSize] = useState(() => paperSizeOf(locale));
  const [making, setMaking] = useState<string>();
  const [said, setSaid] = useState<{ is: 'good' | 'bad'; sentence: string }>();
  const [preview, setPreview] = useState<{ readonly words: string; readonly file: File }>();

  async function make({ paper, words }: PaperOffer, format: PaperFormat, then: 'look' | 'save') {
    setMaking(words);
    setSaid(undefined);
    try {
      const address = jobAddress(desk.id, location);
      const { content, fileName } = await papers.make(
        desk.id,
        { paper, format, size, units: unit, address, locale },
        language,
      );
      if (then === 'look') {
        setPreview({ words, file: new File([content], fileName, { type: content.type }) });
      } else {
        saveFile(content, fileName);
        setSaid({ is: 'good', sentence: say('{file} is among your downloads.', { file: fileName }) });
      }
    } catch (error) {
      if (error instanceof PaperStopped)
        setSaid({ is: 'good', sentence: say('Stopped: {words} was not made.', { words }) });
      else setSaid({ is: 'bad', sentence: sentenceOf(error) });
    } finally {
      setMaking(undefined);
    }
  }

  const Heading = level === 2 ? 'h2' : 'h3';
  const isBusy = making !== undefined;
  return (
    <section aria-labelledby={heading} className="papers">
      <Heading id={heading}>
        {offers.length === 1 ? say('{words} as a paper', { words: offers[0]!.words }) : say('Papers')}
      </Heading>
      <Choice
        label={say('Paper size')}
        value={size}
        onChange={setSize}
        options={[
          { value: 'A4', words: 'A4' },
          { value: 'Letter', words: 'Letter' },
        ]}
      />
      <ul className="paper-offers">
        {offers.map((offer) => (
          <li key={offer.paper} className="paper-offer">
            <p>
              <strong>{offer.words}</strong>
              {offer.says !== undefined && <> {offer.says}</>}
            </p>
            <div className="button-row">
              <button
                type="button"
                className="button strong"
                disabled={isBusy}
                aria-label={say('Look at {words}', { words: offer.words })}
                onClick={() => void make(offer, 'pdf', 'look')}
              >
                {say('Look at it')}
              </button>
              {(['pdf', 'csv'] as const).map((format) => (
                <button
                  key={format}
                  type="button"
                  className="button"
                  disabled={isBusy}
                  aria-label={`${offer.words}, ${format.toUpperCase()}`}
                  onClick={() => void make(offer, format, 'save')}
                >
                  {format.toUpperCase()}
                </button>
              ))}
            </div>
          </li>
        ))}
      </ul>
      <p aria-live="polite" className={said?.is === 'bad' ? 'warn' : undefined}>
        {isBusy
          ? say('{words} is being made on this device …', { words: making })
          : said && (said.is === 'bad' ? `▲ ${said.sentence}` : said.sentence)}
      </p>
      {isBusy && (
        <button type="button" className="button" onClick={() => papers.stop()}>
          {say('Stop')}
        </button>
      )}
      <p className="faint">
        <LaterFilesSign />
      </p>
      {isForThisComputerAlone(location.hostname) && (
        <p className="faint">
          {say(
            'The code to scan on a paper names the address of this page, {address}, which only this computer can open. Before you print a paper that others scan, open Becket by the address it has in the network of the shop.',
            { address: location.origin },
          )}
        </p>
      )}
      {preview !== undefined && (
        <Suspense fallback={<p>{say('Opening …')}</p>}>
          <PaperPreview words={preview.words} file={preview.file} onClose={() => setPreview(undefined)} />
        </Suspense>
      )}
    </section>
  );
}
