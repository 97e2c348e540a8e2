import { METRIC_WIRE_SIZES, sayKnown, US_WIRE_SIZES } from '@becket/core';
import type { PlanRules } from '@becket/tasks';
import { useShop } from '../../desk/use-shop.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import type { SetRules } from './limit-fields.tsx';
import { wiresOnShelf } from './plan-wires.ts';

interface Props {
  readonly rules: PlanRules;
  readonly onNumbering: (wires: PlanRules['wires']) => void;
  readonly set: SetRules;
}

/** Which wire a scale is made of: a way of numbering, and every size of it or the shop's shelf alone. */
export function WireChoice({ rules, onNumbering, set }: Props) {
  const language = useLanguage();
  const { say } = language;
  return (
    <>
      <Choice<PlanRules['wires']>
        label={say('Wire to choose from')}
        value={rules.wires}
        onChange={onNumbering}
        options={[
          { value: 'US', words: sayKnown(US_WIRE_SIZES.name, language) },
          { value: 'metric', words: sayKnown(METRIC_WIRE_SIZES.name, language) },
        ]}
      />
      <StockChoice rules={rules} onChange={(plainInStock_m) => set({ plainInStock_m })} />
    </>
  );
}

/** Whether plain wire is taken from every listed size or from the shop's shelf alone. */
function StockChoice({
  rules,
  onChange,
}: {
  rules: PlanRules;
  onChange: (plainInStock_m: readonly number[] | undefined) => void;
}) {
  const { say } = useLanguage();
  const { stock } = useShop();
  return (
    <>
      <Choice
        label={say('Plain wire')}
        value={rules.plainInStock_m === undefined ? 'listed' : 'stock'}
        onChange={(value) => onChange(value === 'stock' ? wiresOnShelf(stock.lines) : undefined)}
        options={[
          { value: 'listed', words: say('every listed size') },
          { value: 'stock', words: say('only what the shop has') },
        ]}
      />
      {rules.plainInStock_m !== undefined && (
        <p className={rules.plainInStock_m.length === 0 ? 'question' : 'faint'}>
          {rules.plainInStock_m.length === 0
            ? say(
                '? No wire is free in the shop’s stock: count it under Order, or choose from every listed size.',
              )
            : say('{count, plural, one {# size is} other {# sizes are}} free in stock now.', {
                count: rules.plainInStock_m.length,
              })}
        </p>
      )}
    </>
  );
}
