import { inInchPounds, type Language, type NewtonMetres } from '@becket/core';

/** '9.4 N·m (83 in·lbf)' */
export const torqueText = (torque: NewtonMetres, { fixed }: Language): string =>
  `${fixed(torque, 1)} N·m (${fixed(inInchPounds(torque), 0)} in·lbf)`;
