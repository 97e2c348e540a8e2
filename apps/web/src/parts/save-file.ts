/** Hands a file to the user, as a download. */
export function saveFile(content: Blob, fileName: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser has taken it by then; some need the address a little longer than the click.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A name that every file system takes. */
export function fileNameFrom(words: string): string {
  const plain = words
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  return plain === '' ? 'job' : plain;
}
