/*
 * Put into the page before anything else of it: notes how long a reading takes from its Enter key to the picture.
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
  window.entryWatch = {
    /** Says what will be read back. */
    expect(text) {
      pressed = 0;
      done = new Promise((resolve) => {
        const observer = new MutationObserver(() => {
          const words = document.querySelector('.read-back-value')?.textContent ?? '';
          if (pressed === 0 || !words.startsWith(text)) return;
          observer.disconnect();
          const toDocument = performance.now() - pressed;
          requestAnimationFrame(() => {
            // A message that is sent before a frame is painted is read after it.
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve({ toPicture: performance.now() - pressed, toDocument });
            port2.postMessage(undefined);
          });
        });
        observer.observe(document.body, { subtree: true, childList: true, characterData: true });
      });
    },
    shown: () => done ?? Promise.reject(new Error('nothing was expected')),
  };
})();
