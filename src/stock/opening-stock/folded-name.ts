/** A name by which two spellings are one: capitals, outer and double spaces and the encoding of accents do not matter. */
export function foldedName(name: string | null): string {
  return (name ?? '').normalize('NFKC').trim().replace(/\s+/g, ' ').toLocaleLowerCase('en');
}
