import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { useEffect, useRef, useState } from 'react';
import { useLanguage } from './language.tsx';

interface Props {
  readonly content: Blob;
  /** Width of a page as a multiple of the room there is. */
  readonly zoom: number;
  readonly onProblem: () => void;
}

/** The pages of a PDF as pictures, with their words for screen readers; drawn where they are near, given up where not. */
export function PdfPages({ content, zoom, onProblem }: Props) {
  const { say } = useLanguage();
  const [pages, setPages] = useState<readonly PDFPageProxy[]>();
  const room = useRef<HTMLElement>(null);
  const problem = useRef(onProblem);
  problem.current = onProblem;

  useEffect(() => {
    let isWanted = true;
    let opened: PDFDocumentProxy | undefined;
    (async () => {
      const document = await openPdf(new Uint8Array(await content.arrayBuffer()));
      opened = document;
      if (!isWanted) return void document.destroy();
      const numbers = Array.from({ length: document.numPages }, (_, index) => index + 1);
      const found = await Promise.all(numbers.map((number) => document.getPage(number)));
      if (isWanted) setPages(found);
    })().catch(() => {
      if (isWanted) problem.current();
    });
    return () => {
      isWanted = false;
      void opened?.destroy();
    };
  }, [content]);

  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard
    <section className="pdf-room" ref={room} tabIndex={0} aria-label={say('Pages')}>
      {pages === undefined ? (
        <p>{say('Opening …')}</p>
      ) : (
        pages.map((page) => (
          <Page
            key={page.pageNumber}
            page={page}
            name={say('Page {number} of {count}', { number: page.pageNumber, count: pages.length })}
            zoom={zoom}
            room={room}
          />
        ))
      )}
    </section>
  );
}

interface PageProps {
  readonly page: PDFPageProxy;
  readonly name: string;
  readonly zoom: number;
  readonly room: React.RefObject<HTMLElement | null>;
}

function Page({ page, name, zoom, room }: PageProps) {
  const frame = useRef<HTMLElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [isNear, setNear] = useState(false);
  const [words, setWords] = useState('');
  const { width, height } = page.getViewport({ scale: 1 });

  useEffect(() => {
    const watch = new IntersectionObserver(([seen]) => setNear(seen?.isIntersecting === true), {
      root: room.current,
      rootMargin: '80% 0px',
    });
    watch.observe(frame.current!);
    return () => watch.disconnect();
  }, [room]);

  useEffect(() => {
    let isWanted = true;
    wordsOf(page).then(
      (found) => isWanted && setWords(found),
      () => {},
    );
    return () => {
      isWanted = false;
    };
  }, [page]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another zoom is another width of the frame
  useEffect(() => {
    const drawn = canvas.current!;
    if (!isNear) return;
    // Sharp on fine screens; more than this the memory of a phone does not bear.
    const wide = frame.current!.clientWidth * Math.min(devicePixelRatio, 2.5);
    const viewport = page.getViewport({ scale: Math.min(wide, mostPixelsWide) / width });
    drawn.width = Math.round(viewport.width);
    drawn.height = Math.round(viewport.height);
    const drawing = page.render({ canvas: drawn, viewport });
    // Given up when it is no longer wanted: nothing failed.
    drawing.promise.catch(() => {});
    return () => {
      drawing.cancel();
      drawn.width = 0;
      drawn.height = 0;
    };
  }, [page, isNear, zoom, width]);

  return (
    <figure
      className="pdf-page"
      ref={frame}
      style={{ width: `${zoom * 100}%`, aspectRatio: `${width} / ${height}` }}
    >
      <canvas ref={canvas} />
      <figcaption className="unseen">
        {name}. {words}
      </figcaption>
    </figure>
  );
}

const mostPixelsWide = 2400;

/** The library is large: it comes with the first paper that is looked at. */
async function openPdf(data: Uint8Array): Promise<PDFDocumentProxy> {
  const pdf = await import('pdfjs-dist/legacy/build/pdf.mjs');
  pdf.GlobalWorkerOptions.workerPort ??= new Worker(
    new URL('../worker/pdf-reader-worker.ts', import.meta.url),
    { type: 'module', name: 'pdf-reader' },
  );
  return pdf.getDocument({ data, verbosity: 0 }).promise;
}

async function wordsOf(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent();
  return items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : '')).join('');
}
