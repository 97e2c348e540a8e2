import { useEffect, useRef } from 'react';

/** While this is drawn, going back (the key of a phone, a gesture) closes it instead of leaving the page under it. */
export function useBackToClose(onClose: () => void): void {
  const close = useRef(onClose);
  close.current = onClose;
  useEffect(() => {
    const mark = `above ${Math.random()}`;
    history.pushState({ mark }, '');
    const goneBack = () => close.current();
    addEventListener('popstate', goneBack);
    return () => {
      removeEventListener('popstate', goneBack);
      // Closed in another way: the step that was put there for it is taken out again.
      if ((history.state as { mark?: string } | null)?.mark === mark) history.back();
    };
  }, []);
}
