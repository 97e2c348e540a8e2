/** The bytes of the four faces that papers are set in. */
export interface PaperFonts {
  readonly normal: Uint8Array;
  readonly bold: Uint8Array;
  readonly italics: Uint8Array;
  readonly boldItalics: Uint8Array;
}

/** File names of the faces in `dejavu-fonts-ttf`, which are their PostScript names too. */
export const fontFileNames = {
  normal: 'DejaVuSansCondensed',
  bold: 'DejaVuSansCondensed-Bold',
  italics: 'DejaVuSansCondensed-Oblique',
  boldItalics: 'DejaVuSansCondensed-BoldOblique',
} as const satisfies Record<keyof PaperFonts, string>;
