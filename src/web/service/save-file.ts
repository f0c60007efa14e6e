/** Hands a file to the browser to be kept or printed. */
export function saveFile(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Not before the browser has taken it up.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
