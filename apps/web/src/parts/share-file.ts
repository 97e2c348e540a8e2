/** Whether this device can hand such a file to another program. */
export function canShareFile(file: File): boolean {
  return navigator.canShare?.({ files: [file] }) === true;
}

/** Hands a file to another program of the device. Gives back whether that went well, or the user thought better of it. */
export async function shareFile(file: File): Promise<boolean> {
  try {
    await navigator.share({ files: [file], title: file.name });
    return true;
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError';
  }
}
