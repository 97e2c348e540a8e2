import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { fontFileNames, type PaperFonts } from './fonts.ts';

let loaded: Promise<PaperFonts> | undefined;

/** The fonts from the package they come in, read once. For Node; in a browser the caller brings the bytes. */
export function fontsOnNode(): Promise<PaperFonts> {
  loaded ??= loadFonts();
  return loaded;
}

async function loadFonts(): Promise<PaperFonts> {
  const { resolve } = createRequire(import.meta.url);
  const read = (name: string) => readFile(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
  const [normal, bold, italics, boldItalics] = await Promise.all([
    read(fontFileNames.normal),
    read(fontFileNames.bold),
    read(fontFileNames.italics),
    read(fontFileNames.boldItalics),
  ]);
  return { normal, bold, italics, boldItalics };
}
