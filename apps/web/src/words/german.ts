import type { Catalogue } from '@becket/core';
import { german as packages } from '@becket/tasks/german';
import { german as desk } from '../desk/german.ts';
import { german as parts } from '../parts/german.ts';
import { german as photos } from '../photos/german.ts';
import { german as piano } from '../piano/german.ts';
import { german as shell } from '../shell/german.ts';
import { german as appraise } from '../tasks/appraise/german.ts';
import { german as handOver } from '../tasks/hand-over/german.ts';
import { german as order } from '../tasks/order/german.ts';
import { german as record } from '../tasks/record/german.ts';
import { german as scale } from '../tasks/scale/german.ts';
import { german as settle } from '../tasks/settle/german.ts';
import { german as string } from '../tasks/string/german.ts';
import { german as worker } from '../worker/german.ts';

/** All messages of the screens and of what is under them in German. A chunk of its own, fetched when it is asked for. */
export const german: Catalogue = {
  ...packages,
  ...desk,
  ...parts,
  ...photos,
  ...piano,
  ...shell,
  ...worker,
  ...appraise,
  ...record,
  ...handOver,
  ...settle,
  ...order,
  ...string,
  ...scale,
};
