import { afterPicture } from './after-picture.ts';

/** After this long nobody waits for it any more. */
const patience_ms = 4_000;
const focusable = 'a[href], button, input, select, textarea, summary, [tabindex]';

/**
 * Brings what a link leads to into sight and gives it the focus, once the page that has it is drawn: the thing itself,
 * or the first control in it. Ends without a word when it does not come, or when the address is another one by then.
 *
 * @param selector  of the thing on the page that the link leads to
 * @param address  the hash of that page
 */
export async function focusWhenThere(selector: string, address: string): Promise<void> {
  const until = Date.now() + patience_ms;
  let here: HTMLElement | null = null;
  while (here === null) {
    await afterPicture();
    if (Date.now() > until) return;
    if (location.hash === address) here = document.querySelector<HTMLElement>(selector);
  }
  // The page gives the focus to itself when it opens, and that may come a few pictures later.
  for (let picture = 0; picture < 8; picture += 1) {
    await afterPicture();
    if (location.hash !== address) return;
    const { activeElement } = document;
    const isTaken = picture > 0 && activeElement !== document.body && activeElement?.id !== 'place';
    if (isTaken) continue;
    here = document.querySelector<HTMLElement>(selector) ?? here;
    here.scrollIntoView({ block: 'center' });
    (here.matches(focusable) ? here : here.querySelector<HTMLElement>(focusable))?.focus({
      preventScroll: true,
    });
  }
}
