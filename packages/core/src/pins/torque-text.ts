import { inInchPounds, type NewtonMetres } from '../units/index.ts';
import type { Language } from '../words/index.ts';

/**
 * A torque in both units, as the trade reads it. A wrench reads no finer than a tenth of a N·m or a whole in·lbf.
 * @example torqueText(inchPounds(120), english)  // = 13.6 N·m (120 in·lbf)
 */
export function torqueText(torque: NewtonMetres, { fixed }: Language): string {
  return `${fixed(torque, 1)} N·m (${fixed(inInchPounds(torque), 0)} in·lbf)`;
}
