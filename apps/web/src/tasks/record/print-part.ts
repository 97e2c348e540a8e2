/** Prints one part of the screen: the element of this class and nothing else of the task. */
export function printPart(className: string): void {
  const part = document.querySelector(`.${className}`);
  const root = document.documentElement;
  part?.classList.add('on-paper');
  root.dataset.printing = className;
  const done = () => {
    part?.classList.remove('on-paper');
    delete root.dataset.printing;
    removeEventListener('afterprint', done);
  };
  addEventListener('afterprint', done);
  print();
}
