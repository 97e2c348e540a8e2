import { type Message, message } from '@becket/core';
import { type Emphasis, emphases, type PlanRules } from '@becket/tasks';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import type { SetRules } from './limit-fields.tsx';

const emphasisWords: Readonly<Record<Emphasis, Message>> = {
  little: message('[how much it counts] little'),
  'as usual': message('[how much it counts] as usual'),
  much: message('[how much it counts] much'),
};

const aims = [
  ['evenTension', message('Tension even from note to note')],
  ['evenInharmonicity', message('Inharmonicity even from note to note')],
  ['fewSizeChanges', message('Few changes of size')],
  ['fewTiedStrings', message('Few tied strings')],
] as const;

/** How much each aim counts against the others. */
export function WhatCounts({ rules, set }: { rules: PlanRules; set: SetRules }) {
  const { say } = useLanguage();
  return (
    <>
      <h3>{say('What counts')}</h3>
      {aims.map(([name, label]) => (
        <Choice<Emphasis>
          key={name}
          label={say(label)}
          value={rules[name]}
          onChange={(value) => set({ [name]: value })}
          options={(Object.keys(emphases) as Emphasis[]).map((value) => ({
            value,
            words: say(emphasisWords[value]),
          }))}
        />
      ))}
    </>
  );
}
