/** As much of an event of the page as is needed here: React's own and the browser's both have it. */
interface Press {
  /** The button or the form that it belongs to. */
  readonly currentTarget: EventTarget;
  preventDefault(): void;
}

const underWay = new WeakSet<EventTarget>();

/** Resolves when what has changed so far is drawn: the messages that were waiting, among them the page's own, go first. */
const nextTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/**
 * A handler for a button or a form that keeps something. A second press of the same one, while what the first began is
 * under way, is passed over: a double click, or Enter pressed twice, is one wish, and the journal takes nothing back.
 *
 * Other buttons work meanwhile. What `work` throws is thrown on as a rejection nobody handles, as it would be without this.
 *
 * @example
 * // <form onSubmit={once(keep)}>
 * // <button type="button" onClick={once(() => desk.run(takeItBack))}>
 */
export function once<Event extends Press>(work: (event: Event) => Promise<unknown>): (event: Event) => void {
  return (event) => {
    // Also of a press that is passed over: a form that is sent by the browser itself would load the page anew.
    event.preventDefault();
    const { currentTarget } = event;
    if (underWay.has(currentTarget)) return;
    underWay.add(currentTarget);
    void work(event)
      .finally(nextTurn)
      .finally(() => underWay.delete(currentTarget));
  };
}
