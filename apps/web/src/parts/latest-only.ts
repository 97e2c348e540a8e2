/**
 * Takes answers that are on their way, and passes over one that comes after the answer to a later question: what is shown
 * never goes back to what was.
 */
export function latestOnly<Answer>(
  take: (answer: Answer) => void,
): (coming: Promise<Answer>) => Promise<void> {
  let asked = 0;
  let shown = 0;
  return async (coming) => {
    asked += 1;
    const own = asked;
    const answer = await coming;
    if (own < shown) return;
    shown = own;
    take(answer);
  };
}
