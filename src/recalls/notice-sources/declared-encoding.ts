/**
 * In which encoding bytes are to be read: by their mark, by what the answer says of them, by what an XML text says of
 * itself, else UTF-8. That of the mark and of the answer win (RFC 7303, 3 [S]).
 * @param beginning the first bytes as ISO 8859-1, a character a byte
 * @param contentType such as `application/xml; charset=iso-8859-1`
 * @returns a label as the Encoding Standard knows them, in small letters; whether it is known is not judged
 */
export function declaredEncoding(beginning: string, contentType: string | null): string {
  if (beginning.startsWith('\u00EF\u00BB\u00BF')) return 'utf-8';
  if (beginning.startsWith('\u00FF\u00FE')) return 'utf-16le';
  if (beginning.startsWith('\u00FE\u00FF')) return 'utf-16be';
  const answered = /;\s*charset\s*=\s*"?([^\s";]+)/i.exec(contentType ?? '')?.[1];
  const declared = /^\s*<\?xml\s[^>]*?encoding\s*=\s*["']([\w.-]+)["']/.exec(beginning)?.[1];
  return (answered ?? declared ?? 'utf-8').toLowerCase();
}
