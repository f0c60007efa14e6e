/** Things as a sentence lists them: `a`, `a and b`, `a, b and c`. */
export function writtenList(items: readonly string[], and: string): string {
  const last = items.at(-1) ?? '';
  if (items.length < 2) return last;
  return `${items.slice(0, -1).join(', ')} ${and} ${last}`;
}
