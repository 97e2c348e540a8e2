import { readFileSync } from 'node:fs';
import { relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import postcss from 'postcss';
import { describe, expect, it } from 'vitest';
import { filesBelow } from './files-below.ts';

const tasks = resolve(fileURLToPath(import.meta.url), '../../apps/web/src/tasks');

/** What the sheets of the tasks shape: selector by selector, with the folder of its task. */
const shaped = filesBelow(tasks, /\.css$/).flatMap((file) => {
  const [task] = relative(tasks, file).split(sep);
  const selectors: { task: string; selector: string }[] = [];
  postcss.parse(readFileSync(file, 'utf8'), { from: file }).walkRules((rule) => {
    // The steps of an animation are written as rules, and select nothing.
    if (rule.parent?.type === 'atrule' && /keyframes$/.test((rule.parent as postcss.AtRule).name)) return;
    for (const selector of rule.selectors) selectors.push({ task: task!, selector });
  });
  return selectors;
});

/*
 * The sheet of a task comes when the task is opened, and stays. What it shapes outside its own task would look one way
 * before and another way after.
 */
describe('the style sheets of the tasks', () => {
  it('shape nothing by the name of an element alone', () => {
    expect(shaped.length).toBeGreaterThan(300);
    expect(shaped.filter(({ selector }) => !/[.#]/.test(selector))).toEqual([]);
  });

  it('share no class with one another: what two tasks shape stands in the look of the whole', () => {
    const tasksOf = new Map<string, Set<string>>();
    for (const { task, selector } of shaped) {
      const first = /\.([\w-]+)/.exec(selector)?.[1];
      if (first === undefined) continue;
      tasksOf.set(first, (tasksOf.get(first) ?? new Set()).add(task));
    }
    const shared = [...tasksOf].filter(([, of]) => of.size > 1).map(([name, of]) => [name, ...of]);
    expect(shared).toEqual([]);
  });
});
