import type { Language } from '@becket/core';
import type { BassOrder, Order } from '@becket/journal';
import { changedSinceOrder } from '@becket/journal';
import type { Block, Box } from '../page-tree.ts';

/** What the checks of the order say: that all pass, or which somebody answers for and which nobody does yet. */
export function checksChapter({ checks }: BassOrder, language: Language): Block[] {
  const { say, day, plain } = language;
  // What is missing stands, drawn together, among the lines to be confirmed.
  const own = checks.filter(({ id }) => !id.includes('/missing/'));
  const missing = checks.length - own.length;
  const signedMissing = checks.filter(({ id, signed }) => id.includes('/missing/') && signed !== undefined);
  const items = own.map(({ sentence, signed }) =>
    signed === undefined
      ? say('NOT SIGNED: {sentence}', { sentence })
      : say('{sentence} Signed by {name} on {day}: {reason}', {
          sentence,
          name: signed.name,
          day: day(signed.at),
          reason: signed.reason,
        }),
  );
  return [
    { is: 'heading', level: 3, text: say('[of an order] Checks') },
    {
      is: 'paragraph',
      text:
        items.length === 0
          ? say(
              'The figures agree with each other: bare ends and winding make the speaking length, loop and back length agree, diameters grow outwards, rows run evenly, and no core is above its share of the break load.',
            )
          : say(
              'These figures do not agree. The strings must not be made before each is measured again or signed by name.',
            ),
    },
    ...(items.length === 0 ? [] : [{ is: 'list', marks: 'boxes', items } as const]),
    ...(missing === 0
      ? []
      : [
          {
            is: 'paragraph',
            tone: 'quiet',
            text:
              signedMissing.length === 0
                ? say('{missing} figures are missing, see above; 0 of them are signed for.', {
                    missing: plain(missing),
                  })
                : say(
                    '{missing} figures are missing, see above; {signed} of them are signed for by {names}.',
                    {
                      missing: plain(missing),
                      signed: plain(signedMissing.length),
                      names: [...new Set(signedMissing.map(({ signed }) => signed!.name))].join(', '),
                    },
                  ),
          } as const,
        ]),
  ];
}

/** Cautions that stand before everything else: the scale has changed, or the order is not ready. */
export function orderWarnings(order: BassOrder, orders: readonly Order[], language: Language): Box[] {
  const { say } = language;
  const changed = orders
    .filter(({ what, state }) => what === 'bass strings' && state !== 'cancelled')
    .flatMap((one) => changedSinceOrder(order, one, language) ?? []);
  const open = order.checks.filter(({ signed }) => signed === undefined).length;
  const texts = [
    ...(order.scaleProblem === undefined ? [] : [order.scaleProblem]),
    ...changed,
    ...(order.mayBeSent || order.strings.length === 0
      ? []
      : [
          say(
            'Not ready to be sent: {count, plural, one {# check is} other {# checks are}} neither passed nor signed.',
            { count: open },
          ),
        ]),
  ];
  return texts.length === 0
    ? []
    : [{ is: 'box', tone: 'caution', title: say('Before this goes out'), texts }];
}

/** What became of the orders, one line each. */
export function orderLog(orders: readonly Order[], { say, day }: Language): string[] {
  return orders
    .filter(({ what }) => what === 'bass strings')
    .map(({ supplier, state, draftedAt, sentOn, expectedOn }) =>
      [
        `${supplier}: ${say(state)}`,
        say('drafted {day}', { day: day(draftedAt) }),
        ...(sentOn === undefined ? [] : [say('sent {day}', { day: day(sentOn) })]),
        ...(expectedOn === undefined ? [] : [say('expected {day}', { day: day(expectedOn) })]),
      ].join(', '),
    );
}
