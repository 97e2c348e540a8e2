import type { PaperName } from '@becket/tasks';
import { useState } from 'react';
import { fetchPaper } from '../../desk/fetch-paper.ts';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { saveFile } from '../../parts/save-file.ts';

const offers: readonly { readonly paper: PaperName; readonly words: string; readonly says: string }[] = [
  {
    paper: 'bass-string-order',
    words: 'Bass string order',
    says: 'String by string with both units, checks and digest: for whoever makes the strings.',
  },
  {
    paper: 'bass-string-plan',
    words: 'Bass string plan, 1:1',
    says: 'The strings at true length over several sheets. Print at 100 %, and measure both rulers.',
  },
  {
    paper: 'purchase-list',
    words: 'Purchase list',
    says: 'By supplier and by size, against the stock, with days to order by.',
  },
];

/** The papers of an order: to look at, to print, to hand on. */
export function PapersPlace() {
  const { desk } = useDesk();
  const { exchange } = useDevice();
  const { unit } = useSettings();
  const [size, setSize] = useState<'A4' | 'Letter'>('A4');
  const [making, setMaking] = useState<string>();
  const [said, setSaid] = useState<{ is: 'good' | 'bad'; sentence: string }>();
  const [preview, setPreview] = useState<{
    readonly address: string;
    readonly words: string;
    readonly file: File;
  }>();

  async function make(paper: PaperName, words: string, then: 'look' | 'save' | 'table'): Promise<void> {
    setMaking(words);
    setSaid(undefined);
    try {
      const { content, fileName } = await fetchPaper(exchange, desk.id, {
        paper,
        format: then === 'table' ? 'csv' : 'pdf',
        size,
        units: unit,
      });
      if (then === 'look') {
        const file = new File([content], fileName, { type: 'application/pdf' });
        if (preview !== undefined) URL.revokeObjectURL(preview.address);
        setPreview({ address: URL.createObjectURL(file), words, file });
        return;
      }
      saveFile(content, fileName);
      setSaid({ is: 'good', sentence: `${fileName} is among your downloads.` });
    } catch (error) {
      setSaid({ is: 'bad', sentence: sentenceOf(error) });
    } finally {
      setMaking(undefined);
    }
  }

  async function share(file: File): Promise<void> {
    try {
      await navigator.share({ files: [file], title: file.name });
    } catch (error) {
      // Somebody who closes the sheet of the device has changed their mind; nothing failed.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      setSaid({
        is: 'bad',
        sentence: `Cannot share ${file.name} from here. Save it, and send it from your files.`,
      });
    }
  }
  const canShare = preview !== undefined && navigator.canShare?.({ files: [preview.file] }) === true;
  return (
    <section aria-labelledby="order-papers">
      <h2 id="order-papers">Papers</h2>
      <Choice
        label="Paper size"
        value={size}
        onChange={setSize}
        options={[
          { value: 'A4', words: 'A4' },
          { value: 'Letter', words: 'Letter' },
        ]}
      />
      <ul className="order-lines">
        {offers.map(({ paper, words, says }) => (
          <li key={paper} className="order-line">
            <strong>{words}</strong>
            <p>{says}</p>
            <div className="button-row">
              <button
                type="button"
                className="button strong"
                disabled={making !== undefined}
                aria-label={`Look at ${words}`}
                onClick={() => void make(paper, words, 'look')}
              >
                Look at it
              </button>
              <button
                type="button"
                className="button"
                disabled={making !== undefined}
                onClick={() => void make(paper, words, 'save')}
              >
                {words}, PDF
              </button>
              <button
                type="button"
                className="button"
                disabled={making !== undefined}
                onClick={() => void make(paper, words, 'table')}
              >
                {words}, CSV
              </button>
            </div>
          </li>
        ))}
      </ul>
      <p aria-live="polite" className={said?.is === 'bad' ? 'warn' : undefined}>
        {making !== undefined
          ? `${making} is being made …`
          : said && (said.is === 'bad' ? `▲ ${said.sentence}` : said.sentence)}
      </p>
      {preview !== undefined && (
        <section aria-labelledby="order-preview">
          <h3 id="order-preview">{preview.words}</h3>
          <div className="button-row">
            <a className="button strong" href={preview.address} target="_blank" rel="noreferrer">
              Open it to print
            </a>
            {canShare && (
              <button type="button" className="button" onClick={() => void share(preview.file)}>
                Share it
              </button>
            )}
            <button
              type="button"
              className="button"
              onClick={() => saveFile(preview.file, preview.file.name)}
            >
              Save it
            </button>
          </div>
          <iframe className="order-preview" src={preview.address} title={preview.words} />
        </section>
      )}
    </section>
  );
}
