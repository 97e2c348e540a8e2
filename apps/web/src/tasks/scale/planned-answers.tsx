import { useLanguage } from '../../parts/language.tsx';
import { type Draft, draftOf, isShown } from './draft.ts';
import type { Planning } from './propose-state.ts';
import { TradeOffPlot } from './trade-off-plot.tsx';

interface Props {
  readonly planned: Extract<Planning, { is: 'planned' }>;
  readonly draft: Draft | undefined;
  readonly onChoose: (draft: Draft) => void;
}

/** The scales that were found: which limits had to give way, what each costs, and what speaks against the one shown. */
export function PlannedAnswers({ planned: { answers, eased }, draft, onChoose }: Props) {
  const { say } = useLanguage();
  const shown = answers.find((answer) => isShown(answer, draft));
  return (
    <>
      {eased.length > 0 && (
        <ul className="notice">
          {eased.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <TradeOffPlot answers={answers} shown={shown} onChoose={(answer) => onChoose(draftOf(answer))} />
      {shown !== undefined && shown.reasonsAgainst.length > 0 && (
        <section className="notice" aria-labelledby="reasons-against">
          <h3 id="reasons-against">{say('Before you choose “{name}”', { name: shown.name })}</h3>
          <ul>
            {shown.reasonsAgainst.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
