// From a page tree to PDF; asked for only when a paper is wanted, since it brings the type-setting library along.
export type { PaperFonts } from './fonts.ts';
export type { PaperMeans, SmallerJpeg } from './means.ts';
export { renderPdf } from './pdf.ts';
export { type PhotoBytes, photosOf } from './photo-content.ts';
export { printSized } from './print-sized.ts';
