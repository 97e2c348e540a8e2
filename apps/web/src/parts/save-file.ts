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
