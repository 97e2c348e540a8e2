// The best plain sizes under stated rules
export {
  bestPlainGauges,
  type GaugeNote,
  gaugeObjective,
  type PlainGaugeAnswer,
  type PlainGaugeProblem,
} from './plain-gauges.ts';
