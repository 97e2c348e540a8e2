import './string.css';
import { message } from '@becket/core';
import { lazy } from 'react';
import { PartFrame } from '../../desk/part-frame.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { Papers } from '../../piano/papers.tsx';

const WiresPlace = lazy(() =>
  import('./wires-place.tsx').then(({ WiresPlace: place }) => ({ default: place })),
);
const BassStrings = lazy(() =>
  import('./bass-strings.tsx').then(({ BassStrings: place }) => ({ default: place })),
);

/** The parts of String: name in the address, words on the screen. */
const parts = {
  wires: message('What goes on next'),
  bass: message('[of a piano] Bass strings'),
  paper: message('Sheets'),
} as const;
type PartName = keyof typeof parts;

/** Stringing: which wire goes on next, which bass strings may, and the sheets to string by. */
export function StringPage({ part }: { part: string | undefined }) {
  const { say } = useLanguage();
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'wires';
  return (
    <PartFrame task="string" parts={parts} shown={name}>
      <p className="notice">
        {say(
          'A string under tension that breaks or slips can blind. Wear eye protection, keep faces out of the line of the wire, and bring the whole piano up evenly.',
        )}
      </p>
      <Part name={name} />
    </PartFrame>
  );
}

function Part({ name }: { name: PartName }) {
  const { say } = useLanguage();
  switch (name) {
    case 'wires':
      return <WiresPlace />;
    case 'bass':
      return <BassStrings />;
    case 'paper':
      return (
        <Papers
          offers={[
            { paper: 'stringing-sheets', words: say('Stringing sheets') },
            { paper: 'cut-list', words: say('Loop plan and cut list') },
          ]}
        />
      );
  }
}
