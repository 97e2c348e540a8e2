/*
 * First-order propagation of uncertainty, one small helper for every calculation of the handbook.
 */

/** A value with its standard uncertainty, both in one unit. */
export interface Estimate {
  readonly value: number;
  /** Standard uncertainty (JCGM 100:2008), ≥ 0. */
  readonly standardUncertainty: number;
  /** The least value that makes sense, where there is one: a bare end cannot be shorter than 0. */
  readonly least?: number;
  /** True for what must stay above zero: a length, a diameter. */
  readonly isPositive?: boolean;
}

/** What one result is worth, and which input that comes from. */
export interface PropagatedEstimate<InputName extends string> extends Estimate {
  /** Share of each input, with its sign, in the unit of the result; the uncertainty is the root of the sum of their squares. */
  readonly contributions: Readonly<Record<InputName, number>>;
}

/**
 * Standard uncertainties of the results of a calculation from those of its inputs.
 *
 *     u²(y) = Σ Zᵢ²        Zᵢ = ½ · [f(x₁, …, xᵢ + uᵢ, …) − f(x₁, …, xᵢ − uᵢ, …)]
 *
 * @param model   the calculation: plain numbers in by name, one or more plain numbers out by name
 * @param inputs  each input with its standard uncertainty; an input with none costs nothing
 * @returns for each result its value at the inputs, its standard uncertainty and the contribution of each input
 *
 * Holds for: inputs that are independent of each other, and a model that is nearly straight over ± one uncertainty. Inputs
 * that depend on each other must first be written in terms of ones that do not (diameters over the windings, not the
 * thickness of each layer). Where xᵢ − uᵢ falls under the input's least value the step is taken upwards only.
 * Error: second order in uᵢ; checked against Monte Carlo in the tests of `core/scale`.
 * Throws: RangeError when a value is not finite or an uncertainty is negative.
 * Source: JCGM 100:2008 (GUM), 5.1.2 equation (10) and 5.1.3 note 2.
 * @example  propagate((x) => ({ area: (Math.PI / 4) * x.d ** 2 }), { d: { value: 2, standardUncertainty: 0.01 } }).area.standardUncertainty  // ≈ 0.031416
 */
export function propagate<InputName extends string, ResultName extends string>(
  model: (inputs: Readonly<Record<InputName, number>>) => Readonly<Record<ResultName, number>>,
  inputs: Readonly<Record<InputName, Estimate>>,
): Readonly<Record<ResultName, PropagatedEstimate<InputName>>> {
  const inputNames = Object.keys(inputs) as InputName[];
  const values = {} as Record<InputName, number>;
  for (const name of inputNames) {
    const { value, standardUncertainty } = inputs[name];
    if (!Number.isFinite(value) || !(Number.isFinite(standardUncertainty) && standardUncertainty >= 0)) {
      throw new RangeError(
        `Cannot propagate uncertainty as ${name} must be finite with an uncertainty ≥ 0: current value is ` +
          `${value} ± ${standardUncertainty}`,
      );
    }
    values[name] = value;
  }

  const centre = model(values);
  const resultNames = Object.keys(centre) as ResultName[];
  const squares = {} as Record<ResultName, number>;
  const contributions = {} as Record<ResultName, Record<InputName, number>>;
  for (const result of resultNames) {
    squares[result] = 0;
    contributions[result] = {} as Record<InputName, number>;
  }
  for (const name of inputNames) {
    const { value, standardUncertainty, least } = inputs[name];
    const step = stepFor(inputs[name]);
    const isOneSided = least !== undefined && value - step < least;
    const above = step === 0 ? centre : model({ ...values, [name]: value + step });
    const below = step === 0 || isOneSided ? centre : model({ ...values, [name]: value - step });
    for (const result of resultNames) {
      const change = (above[result] - below[result]) / (isOneSided ? 1 : 2);
      const contribution = step === standardUncertainty ? change : (change * standardUncertainty) / step;
      contributions[result][name] = contribution;
      squares[result] += contribution ** 2;
    }
  }

  const propagated = {} as Record<ResultName, PropagatedEstimate<InputName>>;
  for (const result of resultNames) {
    propagated[result] = {
      value: centre[result],
      standardUncertainty: Math.sqrt(squares[result]),
      contributions: contributions[result],
    };
  }
  return propagated;
}

/**
 * How far an input is varied: by its standard uncertainty. Where that would take what must be positive to zero or past it (a
 * length of 0.35 m ± 0.43 m, from two readings that contradict each other) by a tenth of its value, and the change is scaled
 * up, which a first-order law allows.
 */
function stepFor({ value, standardUncertainty, isPositive = false }: Estimate): number {
  return isPositive && standardUncertainty >= value ? value / 10 : standardUncertainty;
}
