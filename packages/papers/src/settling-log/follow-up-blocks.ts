import { type Language, message } from '@becket/core';
import type { FollowUp, Settling } from '@becket/journal';
import type { Block, Cell } from '../page-tree.ts';

const kindWords = {
  'another pass': message('another pass'),
  tuning: message('tuning'),
  'a look': message('a look'),
} as const;

/** Days planned and done. */
export function followUpBlocks({ followUps }: Settling, today: string, language: Language): Block[] {
  const { say } = language;
  if (followUps.length === 0) return [{ is: 'paragraph', text: say('No follow-up is planned yet.') }];
  return [
    {
      is: 'table',
      columns: [
        { heading: say('planned for'), align: 'left', share: 60 },
        { heading: say('[a follow-up] what'), align: 'left', share: 60 },
        { heading: say('done on'), align: 'left', share: 70 },
        { heading: '°C', align: 'right', share: 38 },
        { heading: say('RH, %'), align: 'right', share: 38 },
        { heading: say('[a remark] note'), align: 'left', share: 110 },
      ],
      rows: followUps.map((one) => ({ cells: followUpCells(one, today, language) })),
    },
  ];
}

function followUpCells({ on, what, note, done }: FollowUp, today: string, language: Language): Cell[] {
  const { say, day, plain } = language;
  const notes = [note, done?.note].filter((text) => text !== undefined).join('; ');
  const air = (value: number | undefined): Cell =>
    done === undefined ? '' : value === undefined ? { absent: say('not read') } : plain(value);
  return [
    day(on),
    say(kindWords[what]),
    done === undefined ? { absent: on < today ? say('late') : say('not yet') } : day(done.on),
    air(done?.temperature_c),
    air(done?.relativeHumidity_percent),
    notes,
  ];
}
