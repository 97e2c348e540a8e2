import type { Catalogue } from '@becket/core';
import { german as decision } from './german-decision.ts';
import { german as estimate } from './german-estimate.ts';
import { german as pins } from './german-pins.ts';
import { german as survey } from './german-survey.ts';
import { german as torque } from './german-torque.ts';

export const german: Catalogue = {
  ...survey,
  ...decision,
  ...estimate,
  ...torque,
  ...pins,
};
