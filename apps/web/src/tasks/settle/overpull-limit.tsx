import { type Language, PUBLISHED_STRENGTH_TABLES, sayKnown } from '@becket/core';
import { type SettlingLimits, STARTING_OVERPULL_LIMIT } from '@becket/journal';
import { setOverpullLimit, withdrawEntry } from '@becket/tasks';
import { useState } from 'react';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { shareOf, shareText } from './settle-state.ts';

type Limit = Pick<SettlingLimits, 'highestBreakShare' | 'source' | 'strengthTable'>;

/** A limit as it is put into a sentence. */
export const limitInWords = ({ highestBreakShare, source, strengthTable }: Limit, language: Language) => ({
  share: shareText(highestBreakShare, language),
  source: sayKnown(source, language),
  table: sayKnown(strengthTable, language),
});

/** How far up a string of this job may be pulled: who says so, to be changed and taken back. */
export function OverpullLimit({ limits }: { limits: SettlingLimits }) {
  const { desk } = useDesk();
  const language = useLanguage();
  const { say, localDay } = language;
  const [isOpen, setOpen] = useState(false);
  const { set } = limits;
  return (
    <>
      {set !== undefined && (
        <p className="faint">
          {say('Set for this job by {by}, {day}; it started as {share} % ({source}; {table}).', {
            by: set.by,
            day: localDay(set.at),
            ...limitInWords(STARTING_OVERPULL_LIMIT, language),
          })}
        </p>
      )}
      <div className="button-row settle-limit">
        <button type="button" className="button" onClick={() => setOpen(true)}>
          {say('Change the limit')}
        </button>
        {set !== undefined && (
          <button
            type="button"
            className="button quiet"
            onClick={once(() =>
              desk.run((context, id) => withdrawEntry(context, id, set.entry, say('taken back'))),
            )}
          >
            {say('Take the limit back')}
          </button>
        )}
      </div>
      {isOpen && <LimitSheet limits={limits} onClose={() => setOpen(false)} />}
    </>
  );
}

function LimitSheet({ limits, onClose }: { limits: SettlingLimits; onClose: () => void }) {
  const { desk } = useDesk();
  const language = useLanguage();
  const { say } = language;
  const start = limitInWords(STARTING_OVERPULL_LIMIT, language);
  const [share, setShare] = useState(() => shareText(limits.highestBreakShare, language));
  const [strengthTable, setStrengthTable] = useState(limits.strengthTable);
  const [source, setSource] = useState('');
  const [problem, setProblem] = useState<string>();
  const table = PUBLISHED_STRENGTH_TABLES.find(({ name }) => name === strengthTable);

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const highestBreakShare = shareOf(share, language);
      await desk.runHere((context, id) =>
        setOverpullLimit(context, id, { highestBreakShare, strengthTable, source }),
      );
      onClose();
    } catch (error) {
      setProblem(sentenceOf(error, language));
    }
  }
  return (
    <FormSheet
      title={say('How far up a string may be pulled')}
      keep={say('Keep this limit')}
      problem={problem}
      onKeep={keep}
      onClose={onClose}
    >
      <div className="notice">
        <p>
          {say(
            'Common practice, no source: {share} % by {table}. By a table that gives more strength the same pull is a smaller share: set the limit lower with it.',
            { share: start.share, table: start.table },
          )}
        </p>
        <p>
          {say(
            'A string breaks below its table at a kink, a nick or a hard bend, and without warning. Leave room for that, stand out of its line and protect the eyes.',
          )}
        </p>
      </div>
      <TextField
        label={say('At most, % of the break load')}
        value={share}
        onChange={setShare}
        maxLength={8}
        isNumber
      />
      <SelectField
        label={say('Break load by')}
        hint={table === undefined ? undefined : sayKnown(table.remark, language)}
        value={strengthTable}
        onChange={setStrengthTable}
        options={PUBLISHED_STRENGTH_TABLES.map(({ name }) => ({
          value: name,
          words: sayKnown(name, language),
        }))}
      />
      <TextField
        label={say('Where it comes from')}
        hint={say('Your own experience, a maker, a book: it is printed beside the figure.')}
        value={source}
        onChange={setSource}
        maxLength={300}
      />
    </FormSheet>
  );
}
