import type { Language } from '@becket/core';
import type { BassOrder, Order } from '@becket/journal';
import { changedSinceOrder } from '@becket/journal';
import type { Block, Box } from '../page-tree.ts';

/** What the checks of the order say: that all pass, or which somebody answers for and which nobody does yet. */
export function checksChapter({ checks }: BassOrder, language: Language): Block[] {
  // What is missing stands, drawn together, among the lines to be confirmed.
  const own = checks.filter(({ id }) => !id.includes('/missing/'));
  const missing = checks.length - own.length;
  const signedMissing = checks.filter(({ id, signed }) => id.includes('/missing/') && signed !== undefined);
  const items = own.map(({ sentence, signed }) =>
    signed === undefined
      ? `NOT SIGNED: ${sentence}`
      : `${sentence} Signed by ${signed.name} on ${language.day(signed.at)}: ${signed.reason}`,
  );
  return [
    { is: 'heading', level: 3, text: 'Checks' },
    {
      is: 'paragraph',
      text:
        items.length === 0
          ? 'The figures agree with each other: bare ends and winding make the speaking length, loop and back length agree, diameters grow outwards, rows run evenly, and no core is above its share of the break load.'
          : 'These figures do not agree. The strings must not be made before each is measured again or signed by name.',
    },
    ...(items.length === 0 ? [] : [{ is: 'list', marks: 'boxes', items } as const]),
    ...(missing === 0
      ? []
      : [
          {
            is: 'paragraph',
            tone: 'quiet',
            text: `${missing} figures are missing, see above; ${signedMissing.length} of them are signed for${signedMissing.length === 0 ? '' : ` by ${[...new Set(signedMissing.map(({ signed }) => signed!.name))].join(', ')}`}.`,
          } as const,
        ]),
  ];
}

/** Cautions that stand before everything else: the scale has changed, or the order is not ready. */
export function orderWarnings(order: BassOrder, orders: readonly Order[]): Box[] {
  const changed = orders
    .filter(({ what, state }) => what === 'bass strings' && state !== 'cancelled')
    .flatMap((one) => changedSinceOrder(order, one) ?? []);
  const open = order.checks.filter(({ signed }) => signed === undefined).length;
  const texts = [
    ...(order.scaleProblem === undefined ? [] : [order.scaleProblem]),
    ...changed,
    ...(order.mayBeSent || order.strings.length === 0
      ? []
      : [
          `Not ready to be sent: ${open} ${open === 1 ? 'check is' : 'checks are'} neither passed nor signed.`,
        ]),
  ];
  return texts.length === 0 ? [] : [{ is: 'box', tone: 'caution', title: 'Before this goes out', texts }];
}

/** What became of the orders, one line each. */
export function orderLog(orders: readonly Order[], language: Language): string[] {
  return orders
    .filter(({ what }) => what === 'bass strings')
    .map(({ supplier, state, draftedAt, sentOn, expectedOn }) =>
      [
        `${supplier}: ${state}`,
        `drafted ${language.day(draftedAt)}`,
        ...(sentOn === undefined ? [] : [`sent ${language.day(sentOn)}`]),
        ...(expectedOn === undefined ? [] : [`expected ${language.day(expectedOn)}`]),
      ].join(', '),
    );
}
