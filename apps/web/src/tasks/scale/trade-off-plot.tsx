import type { PlannedScale } from '@becket/tasks';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { answerWords, proofWords } from './answer-words.ts';

interface Props {
  readonly answers: readonly PlannedScale[];
  readonly shown: PlannedScale | undefined;
  readonly onChoose: (answer: PlannedScale) => void;
}

const [width, height] = [320, 220];
const edge = { top: 30, right: 26, bottom: 44, left: 52 };

/** Several scales on one curve: what each changes against how even it gets. Each can be tapped, or chosen from the list. */
export function TradeOffPlot({ answers, shown, onChoose }: Props) {
  const language = useLanguage();
  const { say } = language;
  const { unit } = useSettings();
  const most = Math.max(1, ...answers.map(({ changedNotes }) => changedNotes));
  const uneven = Math.max(0.001, ...answers.map(({ tensionUnevenness }) => tensionUnevenness)) * 100;
  const x = scaleLinear()
    .domain([0, most])
    .range([edge.left, width - edge.right]);
  const y = scaleLinear()
    .domain([0, uneven])
    .nice(4)
    .range([height - edge.bottom, edge.top]);
  const place = (answer: PlannedScale) =>
    [x(answer.changedNotes), y(answer.tensionUnevenness * 100)] as const;
  return (
    <figure className="chart trade-off">
      <h3>{say('What does more evenness cost?')}</h3>
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        {y.ticks(4).map((tick) => (
          <g key={tick}>
            <line className="chart-grid" x1={edge.left} x2={width - edge.right} y1={y(tick)} y2={y(tick)} />
            <text x={edge.left - 8} y={y(tick) + 5} textAnchor="end">
              {language.plain(tick)}
            </text>
          </g>
        ))}
        {x.ticks(4).map((tick) => (
          <text key={tick} x={x(tick)} y={height - edge.bottom + 20} textAnchor="middle">
            {tick}
          </text>
        ))}
        <text x={4} y={16}>
          {say('unevenness of tension (%)')}
        </text>
        <text x={width - edge.right} y={height - 6} textAnchor="end">
          {say('notes changed')}
        </text>
        <path className="chart-line" d={line()(answers.map((answer) => [...place(answer)])) ?? ''} />
        {answers.map((answer) => {
          const [cx, cy] = place(answer);
          return (
            // biome-ignore lint/a11y/noStaticElementInteractions: the list below holds the same choice for keyboard and ear
            <g key={answer.name} className="trade-off-point" onClick={() => onChoose(answer)}>
              <circle className="trade-off-reach" cx={cx} cy={cy} r={22} />
              <circle
                className={answer === shown ? 'trade-off-mark shown' : 'trade-off-mark'}
                cx={cx}
                cy={cy}
                r={7}
              />
            </g>
          );
        })}
      </svg>
      <ul className="answers">
        {answers.map((answer) => (
          <li key={answer.name}>
            <button
              type="button"
              className="answer"
              aria-pressed={answer === shown}
              onClick={() => onChoose(answer)}
            >
              <strong>{answer.name}</strong>
              <span>{answerWords(answer, unit, language)}</span>
              {!answer.isProved && (
                <span className="faint">
                  {say('Not proved to be the best: a better one could lower its sum by {share} % at most.', {
                    share: language.fixed(answer.mostBetter * 100, 1),
                  })}
                </span>
              )}
            </button>
          </li>
        ))}
      </ul>
      <p className="faint">{proofWords(answers, language)}</p>
    </figure>
  );
}
