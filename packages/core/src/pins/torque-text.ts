import { inInchPounds, type NewtonMetres } from '../units/index.ts';
import type { Language } from '../words/index.ts';

/** Both units side by side, as the trade reads them: '13.6 N·m (120 in·lbf)'. */
export function torqueText(torque: NewtonMetres, { fixed }: Language): string {
  return `${fixed(torque, 1)} N·m (${inInchPounds(torque).toFixed(0)} in·lbf)`;
}
