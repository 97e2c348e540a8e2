import { describe, expect, it } from 'vitest';
import { once } from './once.ts';

const press = (currentTarget: EventTarget) => ({ currentTarget, preventDefault: () => {} });

/** Work that ends when it is told to. */
function heldWork() {
  const ends: (() => void)[] = [];
  const work = () => new Promise<void>((end) => ends.push(end));
  const settled = () => new Promise((resolve) => setTimeout(resolve, 5));
  return { work, ends, settled };
}

describe('once()', () => {
  it('passes over a second press of the same button while the first is under way', async () => {
    const { work, ends, settled } = heldWork();
    const button = new EventTarget();
    const handle = once(work);
    handle(press(button));
    handle(press(button));
    expect(ends).toHaveLength(1);
    ends[0]!();
    await settled();
    handle(press(button));
    expect(ends).toHaveLength(2);
  });

  it('knows the button again when its handler was made anew, as each drawing of the page does', () => {
    const { work, ends } = heldWork();
    const button = new EventTarget();
    once(work)(press(button));
    once(work)(press(button));
    expect(ends).toHaveLength(1);
  });

  it('does not let in a press before what the work changed has been drawn', async () => {
    const { work, ends } = heldWork();
    const button = new EventTarget();
    const handle = once(work);
    handle(press(button));
    ends[0]!();
    // The page draws in a message of its own, which comes after the promises that are settled by now.
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
    handle(press(button));
    expect(ends).toHaveLength(1);
  });

  it('lets other buttons work meanwhile', () => {
    const { work, ends } = heldWork();
    const handle = once(work);
    handle(press(new EventTarget()));
    handle(press(new EventTarget()));
    expect(ends).toHaveLength(2);
  });

  it('keeps the browser from sending the form, also at a press that is passed over', () => {
    let prevented = 0;
    const form = new EventTarget();
    const event = { currentTarget: form, preventDefault: () => (prevented += 1) };
    const handle = once(heldWork().work);
    handle(event);
    handle(event);
    expect(prevented).toBe(2);
  });
});
