/* The half of the PDF library that reads files, off the main thread. */
import 'pdfjs-dist/legacy/build/pdf.worker.min.mjs';
