import type { PaperFormat, PaperName } from '@becket/tasks';
import { useId, useState } from 'react';
import { fetchPaper } from '../desk/fetch-paper.ts';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDesk } from '../desk/use-desk.ts';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { Choice } from '../parts/choice.tsx';
import { saveFile } from '../parts/save-file.ts';

interface Props {
  readonly offers: readonly { readonly paper: PaperName; readonly words: string }[];
  /** Of its heading. */
  readonly level?: 2 | 3;
}

/** Papers of the open job, each as PDF for people and as CSV for machines. */
export function Papers({ offers, level = 2 }: Props) {
  const { desk } = useDesk();
  const { exchange } = useDevice();
  const { unit } = useSettings();
  const heading = useId();
  const [size, setSize] = useState<'A4' | 'Letter'>('A4');
  const [isMaking, setMaking] = useState(false);
  const [said, setSaid] = useState<{ is: 'good' | 'bad'; sentence: string }>();

  async function fetchIt(paper: PaperName, format: PaperFormat): Promise<void> {
    setMaking(true);
    setSaid(undefined);
    try {
      const { content, fileName } = await fetchPaper(exchange, desk.id, { paper, format, size, units: unit });
      saveFile(content, fileName);
      setSaid({ is: 'good', sentence: `${fileName} is among your downloads.` });
    } catch (error) {
      setSaid({ is: 'bad', sentence: sentenceOf(error) });
    } finally {
      setMaking(false);
    }
  }

  const button = (paper: PaperName, format: PaperFormat, words: string) => (
    <button
      key={`${paper} ${format}`}
      type="button"
      className="button"
      disabled={isMaking}
      onClick={() => void fetchIt(paper, format)}
    >
      {words}
    </button>
  );
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section aria-labelledby={heading} className="papers">
      <Heading id={heading}>{offers.length === 1 ? `${offers[0]!.words} as a paper` : 'Papers'}</Heading>
      <Choice
        label="Paper size"
        value={size}
        onChange={setSize}
        options={[
          { value: 'A4', words: 'A4' },
          { value: 'Letter', words: 'Letter' },
        ]}
      />
      <div className="button-row">
        {offers.flatMap(({ paper, words }) => [
          button(paper, 'pdf', `${words}, PDF`),
          button(paper, 'csv', `${words}, CSV`),
        ])}
      </div>
      <p aria-live="polite" className={said?.is === 'bad' ? 'warn' : undefined}>
        {isMaking
          ? 'The paper is being made …'
          : said && (said.is === 'bad' ? `▲ ${said.sentence}` : said.sentence)}
      </p>
    </section>
  );
}
