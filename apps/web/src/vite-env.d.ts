/// <reference types="vite/client" />
/// <reference types="vite-plugin-pwa/client" />

/** It is loaded for what it does: it answers messages. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.min.mjs';
