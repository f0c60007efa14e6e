/** The service reads bodies of 1 MiB; in JSON a text may be somewhat longer than in its file. */
export const mostFileBytes = 900_000;

export type FileFault = 'workbook' | 'notUtf8' | 'tooLong';

/**
 * The text of a file, which must be UTF-8: by any other reading names would be spoilt without anybody seeing it.
 * @param mostBytes what the route takes that it is for
 * @returns the text, or why there is none
 */
export async function readBroughtFile(
  file: Blob,
  mostBytes = mostFileBytes,
): Promise<{ text: string } | { fault: FileFault }> {
  if (file.size > mostBytes) return { fault: 'tooLong' };
  const bytes = new Uint8Array(await file.arrayBuffer());
  // A workbook of a spreadsheet is a ZIP archive, which begins so.
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return { fault: 'workbook' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return { fault: 'notUtf8' };
  }
}
