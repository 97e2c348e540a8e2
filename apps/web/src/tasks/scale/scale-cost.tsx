import { foldOrders, type ProposedNote, type ScaleComparison } from '@becket/journal';
import { costOfScale, jobWithScale, orderPolicyOf } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useShop } from '../../desk/use-shop.ts';
import { useLanguage } from '../../parts/language.tsx';
import { countSuppliesAway, type SuppliesAnswer } from '../../worker/supplies-away.ts';

interface ScaleCostProps {
  readonly name: string;
  /** Undefined for the scale as it was found. */
  readonly notes: readonly ProposedNote[] | undefined;
  readonly comparison: ScaleComparison;
}

/** A hand that steps through sizes is not counted for at every step. */
const QUIET_ms = 400;

/** What a scale costs in wire and in bass strings, counted away from the screen. */
export function ScaleCost({ name, notes, comparison }: ScaleCostProps) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, entries } = useDesk();
  const { stock, allowances } = useShop();
  const orders = useMemo(() => foldOrders(entries).orders, [entries]);
  const [answer, setAnswer] = useState<SuppliesAnswer>();
  useEffect(() => {
    let forget = () => {};
    const timer = setTimeout(() => {
      forget = countSuppliesAway(
        {
          job: notes === undefined ? { ...job, chosenScale: undefined } : jobWithScale(job, name, notes),
          policy: orderPolicyOf(allowances),
        },
        setAnswer,
        language,
      );
    }, QUIET_ms);
    return () => {
      clearTimeout(timer);
      forget();
    };
  }, [job, name, notes, allowances, language]);
  const supplies = answer?.supplies;
  return (
    <section aria-labelledby="scale-cost">
      <h3 id="scale-cost">{say('What does it cost in wire and bass strings?')}</h3>
      {answer?.problem !== undefined && (
        <p role="alert" className="notice bad">
          ▲ {answer.problem}
        </p>
      )}
      {supplies === undefined ? (
        answer?.problem === undefined && <p role="status">{say('Counting what it takes …')}</p>
      ) : (
        <ul className="summary">
          {costOfScale({ supplies, stock, job: desk.id, orders, comparison, language }).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
