import { A228_MINIMUM, handbookStrengthLaw, metres, pascals, type WireStrengthTable } from '@becket/core';
import { positive } from './compute-kind.ts';

/** What a request may say about its wire; each has a default. */
export const steelParameters = {
  rho_steel_kg_per_m3: positive('density of the steel; default 7850').optional(),
  E_steel_Pa: positive("Young's modulus of the steel; default 202e9").optional(),
};

export const strengthParameters = {
  sut_A_MPa_mm_m: positive(
    'A of the strength law Sut = A / d^m, in MPa with d in mm; without A and m, the ASTM A228 minimum',
  ).optional(),
  sut_m: positive('m of that law; give both or neither').optional(),
};

/** The strength table a request asks for. */
export function strengthTableOf(request: {
  sut_A_MPa_mm_m?: number | undefined;
  sut_m?: number | undefined;
}): WireStrengthTable {
  const { sut_A_MPa_mm_m: strengthAtOneMillimetre, sut_m: exponent } = request;
  if (strengthAtOneMillimetre === undefined && exponent === undefined) return A228_MINIMUM;
  if (strengthAtOneMillimetre === undefined || exponent === undefined) {
    throw new RangeError(
      'Cannot use a strength law as both sut_A_MPa_mm_m and sut_m are needed: found only one of them',
    );
  }
  // The one who writes the law answers for its range.
  return handbookStrengthLaw({
    strengthAtOneMillimetre: pascals(strengthAtOneMillimetre * 1e6),
    exponent,
    source: 'given with the request',
    smallestDiameter: metres(Number.MIN_VALUE),
    largestDiameter: metres(Number.MAX_VALUE),
  });
}
