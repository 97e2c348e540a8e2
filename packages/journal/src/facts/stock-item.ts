import { z } from 'zod';

/**
 * A thing that a shop keeps and buys. What it *is* stands here and not what a supplier calls it, so that two suppliers' wire
 * of one diameter is one item. Wire is counted in whole grams, pins in pieces, anything else in the unit it names.
 */
export const stockItemSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('wire'), diameter_m: z.number().min(0.0003).max(0.003) }),
  z.object({
    kind: z.literal('tuning pin'),
    diameter_m: z.number().min(0.0055).max(0.0095),
    /** Left out while nobody has said which length: that is an item of its own. */
    length_m: z.number().min(0.04).max(0.09).optional(),
  }),
  z.object({
    kind: z.literal('other'),
    name: z.string().trim().min(1).max(120),
    unit: z.enum(['piece', 'set', 'mm', 'g']),
  }),
]);
export type StockItem = z.infer<typeof stockItemSchema>;

/** The unit in which an item is counted, always in whole numbers, so that sums are exact. */
export type StockUnit = 'piece' | 'set' | 'mm' | 'g';

export function stockUnitOf(item: StockItem): StockUnit {
  if (item.kind === 'wire') return 'g';
  return item.kind === 'tuning pin' ? 'piece' : item.unit;
}

/**
 * One text for one item: wire to a micrometre, pins to a hundredth of a millimetre, names without regard to capitals, so that
 * the same thing written twice is one line of the stock. A list in millimetres has 1.041 where the size is 41 mils.
 *
 * @example stockItemId({ kind: 'wire', diameter_m: 0.0009906 })  // = wire 0.991 mm
 * @example stockItemId({ kind: 'tuning pin', diameter_m: 0.0071628, length_m: 0.0635 })  // = tuning pin 7.16 x 63.5 mm
 */
export function stockItemId(item: StockItem): string {
  switch (item.kind) {
    case 'wire':
      return `wire ${(item.diameter_m * 1000).toFixed(3)} mm`;
    case 'tuning pin': {
      const length = item.length_m === undefined ? 'any length' : `${(item.length_m * 1000).toFixed(1)} mm`;
      return `tuning pin ${(item.diameter_m * 1000).toFixed(2)} x ${length}`;
    }
    case 'other':
      return `${item.name.trim().toLowerCase().replace(/\s+/g, ' ')} (${item.unit})`;
  }
}
