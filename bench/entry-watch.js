/*
 * Put into the page before anything else of it: notes how long a reading takes from its Enter key to the pictures of it.
 * Plain JavaScript, since a browser reads it as it stands.
 */
(() => {
  let pressed = 0;
  let done;
  /** By the time stamp of each Enter: the browser's own time from the key to the display of what it changed. */
  const displayed = new Map();
  new PerformanceObserver((list) => {
    for (const { name, startTime, duration } of list.getEntries())
      if (name === 'keydown') displayed.set(startTime, duration);
  }).observe({ type: 'event', durationThreshold: 16 });
  // The time stamp is that of the key itself, so that a wait before its handler counts as well.
  addEventListener(
    'keydown',
    (event) => {
      if (event.key === 'Enter') pressed = event.timeStamp;
    },
    { capture: true },
  );

  /** The time at which the frame that shows what stands in the document now is handed over for display. */
  function afterThisFrame() {
    return new Promise((resolve) => {
      requestAnimationFrame(() => {
        // The most urgent task there is comes right after the frame, before any other work that waits there.
        scheduler.postTask(() => resolve(performance.now()), { priority: 'user-blocking' });
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
      // No more of the page than is looked at: to watch costs the picture too.
      observer.observe(document.querySelector('.read-back') ?? document.body, {
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
        pressed,
      }));
    },
    /** How long the browser says that each of these keys took until its display, in steps of 8 ms; 16 ms at the least. */
    untilDisplay: (keys) => keys.map((key) => displayed.get(key) ?? 16),
    shown: () => done ?? Promise.reject(new Error('nothing was expected')),
  };
})();
