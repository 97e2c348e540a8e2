import { type Language, message, noteName } from '@becket/core';
import { offsetOf, type Pass, type PassSection, type PassValue, type Settling } from '@becket/journal';
import type { Block, Cell, TableRow } from '../page-tree.ts';
import { offsetText } from './offset-text.ts';

/** Every pass, section by section in the order in which they were pulled up. */
export function passesTable(settling: Settling, language: Language): Block[] {
  const { say } = language;
  const { passes } = settling;
  if (passes.length === 0)
    return [
      {
        is: 'paragraph',
        text: say('No pass is recorded yet. The rows on the last page can be filled in at the piano.'),
      },
    ];
  return [
    {
      is: 'table',
      remarks: [
        say(
          'Cents from the pitch of the pass, flat is negative; in brackets the number of notes behind a mean, where notes were read. Lost: how much of the raise was gone when the next pass began.',
        ),
      ],
      columns: [
        { heading: say('[order of sections] order'), align: 'right', share: 24 },
        { heading: say('section'), align: 'left', share: 70 },
        { heading: say('[of a pass] before'), align: 'right', share: 48 },
        { heading: say('aimed at'), align: 'right', share: 44 },
        { heading: say('left at'), align: 'right', share: 48 },
        { heading: say('[of a pass] raised'), align: 'right', share: 40, tone: 'quiet' },
        { heading: say('found later'), align: 'right', share: 48 },
        { heading: say('lost'), align: 'right', share: 40, page: 'core/pitch/fall-back' },
      ],
      rows: passes.flatMap((pass, index): TableRow[] => [
        { band: passWords(pass, language) },
        ...pass.sections.map((section, order) => ({
          cells: sectionCells(pass, section, { order: order + 1, next: passes[index + 1] }, language),
        })),
      ]),
    },
  ];
}

function passWords(pass: Pass, { say, day, plain }: Language): string {
  const { temperature_c, relativeHumidity_percent: humidity } = pass;
  return say('Pass {pass}, {day}, A4 = {pitch} Hz; {temperature}, {humidity}; by {name}', {
    pass: pass.pass,
    day: day(pass.on),
    pitch: plain(pass.referencePitch_hz),
    temperature: temperature_c === undefined ? say('temperature not read') : `${plain(temperature_c)} °C`,
    humidity:
      humidity === undefined
        ? say('humidity not read')
        : say('{percent} % relative humidity', { percent: plain(humidity) }),
    name: pass.by,
  });
}

function sectionCells(
  pass: Pass,
  { section, before, aimed, after }: PassSection,
  { order, next }: { readonly order: number; readonly next: Pass | undefined },
  language: Language,
): Cell[] {
  const { say, fixed } = language;
  const notRead = { absent: say('not read') };
  const value = (values: readonly PassValue[]): Cell => {
    const mean = offsetOf(values);
    if (mean === undefined) return notRead;
    const notes = values.filter(({ key }) => key !== undefined).length;
    const text = offsetText(mean.offset, language);
    return notes === 0 ? text : `${text} (${notes})`;
  };
  const laterValues = next?.sections.find((one) => one.section === section)?.before ?? [];
  const [from, to, later] = [offsetOf(before), offsetOf(after), offsetOf(laterValues)];
  const raise = from === undefined || to === undefined ? undefined : to.offset - from.offset;
  const higherBy = next === undefined ? 0 : 1200 * Math.log2(next.referencePitch_hz / pass.referencePitch_hz);
  const lost = to === undefined || later === undefined ? undefined : to.offset - later.offset - higherBy;
  return [
    String(order),
    section,
    value(before),
    aimed.length === 0 ? { absent: say('none said') } : value(aimed),
    value(after),
    raise === undefined ? '' : offsetText(raise, language),
    next === undefined ? { absent: say('not yet') } : value(laterValues),
    lost === undefined || raise === undefined || raise <= 0 ? '' : `${fixed((100 * lost) / raise, 0)} %`,
  ];
}

const mishapWords = {
  broke: message('broke'),
  slipped: message('slipped'),
  other: message('something else'),
} as const;

/** What broke or slipped, pass by pass; that nothing was noted is said as well. */
export function mishapBlocks({ passes }: Settling, { say }: Language): Block[] {
  if (passes.length === 0) return [];
  const items = passes.flatMap(({ pass, mishaps }) =>
    mishaps.map(({ what, key, string, note }) => {
      const place =
        key === undefined
          ? say('whole piano')
          : string === undefined
            ? noteName(key)
            : say('{note}, string {string}', { note: noteName(key), string });
      const said = { pass, place, what: say(mishapWords[what]) };
      return note === undefined
        ? say('Pass {pass}: {place}: {what}', said)
        : say('Pass {pass}: {place}: {what} (“{note}”)', { ...said, note });
    }),
  );
  return [
    { is: 'heading', level: 3, text: say('What broke or slipped') },
    items.length === 0
      ? { is: 'paragraph', text: say('Nothing was noted.') }
      : { is: 'list', marks: 'dots', items },
  ];
}
