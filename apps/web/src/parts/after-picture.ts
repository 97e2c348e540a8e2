/** At the latest after this the work goes on, also where nothing is painted: a tab in the background has no pictures. */
const longestWait_ms = 200;

/** Resolves once the screen shows what stands in the document now: for work that must not hold up that picture. */
export function afterPicture(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof requestAnimationFrame === 'undefined' || document.visibilityState === 'hidden') {
      resolve();
      return;
    }
    const latest = setTimeout(resolve, longestWait_ms);
    requestAnimationFrame(() => {
      // A message that is sent before a picture is painted is read after it.
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        port1.close();
        clearTimeout(latest);
        resolve();
      };
      port2.postMessage(undefined);
    });
  });
}
