/*
 * Put into the page before anything else of it: notes how long a reading takes from its Enter key to the pictures of it.
 * Plain JavaScript, since a browser reads it as it stands.
 */
(() => {
  let pressed = 0;
  let done;
  // The time stamp is that of the key itself, so that a wait before its handler counts as well.
  addEventListener(
    'keydown',
    (event) => {
      if (event.key === 'Enter') pressed = event.timeStamp;
    },
    { capture: true },
  );

  /** The time of the end of the frame that shows what stands in the document now. */
  function afterThisFrame() {
    return new Promise((resolve) => {
      requestAnimationFrame(() => {
        // A message that is sent before a frame is painted is read after it.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now());
        port2.postMessage(undefined);
      });
    });
  }

  /** Resolves with the time of the first frame that shows what is looked for. */
  function shows(isThere) {
    return new Promise((resolve) => {
      const observer = new MutationObserver(() => {
        if (pressed === 0 || !isThere()) return;
        observer.disconnect();
        resolve(afterThisFrame());
      });
      observer.observe(document.body, {
        subtree: true,
        childList: true,
        characterData: true,
        attributes: true,
        attributeFilter: ['data-is'],
      });
    });
  }

  window.entryWatch = {
    /** Says what will be read back. */
    expect(text) {
      pressed = 0;
      const isReadBack = () =>
        (document.querySelector('.read-back-value')?.textContent ?? '').startsWith(text);
      const isKept = () => isReadBack() && document.querySelector('.read-back[data-is="saved"]') !== null;
      done = Promise.all([shows(isReadBack), shows(isKept)]).then(([picture, kept]) => ({
        toPicture: picture - pressed,
        toKept: kept - pressed,
      }));
    },
    shown: () => done ?? Promise.reject(new Error('nothing was expected')),
  };
})();
