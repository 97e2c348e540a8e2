import { expect, it } from 'vitest';
import { lengthKindOf } from './length-kind.ts';
import { readingQuantities, readingQuantityNames } from './reading-quantities.ts';

it('tells as a diameter exactly what its label calls one', () => {
  for (const quantity of readingQuantityNames)
    expect(lengthKindOf(quantity) === 'diameter', quantity).toBe(
      readingQuantities[quantity].label.includes('diameter'),
    );
});

it('tells a spacing and a rise as small, and a speaking length as a length', () => {
  expect(lengthKindOf('bridge-spacing')).toBe('thin');
  expect(lengthKindOf('bearing-rise')).toBe('thin');
  expect(lengthKindOf('speaking-length')).toBe('length');
});
