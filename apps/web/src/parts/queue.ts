/** One after the other: what was begun first ends first, however fast the next comes. */
export function queue(): <Result>(work: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work, work);
    last = next.catch(() => {});
    return next;
  };
}
