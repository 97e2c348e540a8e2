// A calculation a line: what can be asked
export { type ComputeKind, computeKind } from './compute-kind.ts';
export { computeKinds } from './compute-kinds.ts';
// Answering lines
export {
  type ComputeAnswer,
  type ComputeBatch,
  type ComputeErrorCode,
  computeBatch,
  computeErrorMeanings,
  computeLine,
} from './compute-line.ts';
