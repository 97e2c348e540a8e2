/** At the latest after this the work goes on, also where nothing is painted: a tab in the background has no pictures. */
const longestWait_ms = 200;

/** Resolves once the screen shows what stands in the document now: for work that must not hold up that picture. */
export function afterPicture(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof requestAnimationFrame === 'undefined' || document.visibilityState === 'hidden') {
      resolve();
      return;
    }
    const goOn = () => {
      clearTimeout(latest);
      document.removeEventListener('visibilitychange', goOn);
      resolve();
    };
    const latest = setTimeout(goOn, longestWait_ms);
    // A page that is put away or closed has no more pictures, and what waits for one may be a value to be kept.
    document.addEventListener('visibilitychange', goOn);
    // What runs in this frame comes before its picture, what runs in the next one after it.
    requestAnimationFrame(() => requestAnimationFrame(goOn));
  });
}
