import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The forms in which a text may stand in a file: as it is, with its letters escaped as JSON or an address escapes them,
 * in UTF-16 of either order, in hexadecimal, and in base64 at any of the three places at which it can begin.
 */
export function formsOf(text: string): Map<string, Buffer> {
  const plain = Buffer.from(text, 'utf8');
  const forms = new Map<string, Buffer>();
  for (const cased of new Set([text, text.toLowerCase(), text.toUpperCase()])) {
    const utf8 = Buffer.from(cased, 'utf8');
    forms.set(`UTF-8 "${cased}"`, utf8);
    forms.set(`UTF-16LE "${cased}"`, Buffer.from(cased, 'utf16le'));
    forms.set(`UTF-16BE "${cased}"`, Buffer.from(cased, 'utf16le').swap16());
    forms.set(`hexadecimal "${cased}"`, Buffer.from(utf8.toString('hex')));
  }
  forms.set(
    'JSON escapes',
    Buffer.from(
      JSON.stringify(text)
        .slice(1, -1)
        .replace(/[^\x20-\x7e]/g, escaped),
    ),
  );
  forms.set('an address', Buffer.from(encodeURIComponent(text)));
  forms.set('a form', Buffer.from(encodeURIComponent(text).replaceAll('%20', '+')));
  for (const before of [0, 1, 2]) {
    const whole = Buffer.concat([Buffer.alloc(before), plain]).toString('base64');
    // The first and the last letters depend on what stands beside.
    const inner = whole.slice(Math.ceil((before * 4) / 3), Math.floor(((before + plain.length) * 4) / 3));
    forms.set(`base64 at ${before}`, Buffer.from(inner));
    forms.set(`base64url at ${before}`, Buffer.from(inner.replaceAll('+', '-').replaceAll('/', '_')));
  }
  return forms;
}

const escaped = (character: string) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** Letters of ASCII in lower case, every other byte as it is: so that case does not matter, in a text or in bytes. */
function folded(bytes: Buffer): Buffer {
  const lower = Buffer.from(bytes);
  for (let index = 0; index < lower.length; index += 1) {
    const byte = lower[index] ?? 0;
    if (byte >= 0x41 && byte <= 0x5a) lower[index] = byte | 0x20;
  }
  return lower;
}

/** Searches bytes for texts in any form and case, and says where which was found. */
export class TextSearch {
  private readonly wanted: { text: string; form: string; exact: Buffer; folded: Buffer | null }[];

  constructor(texts: readonly string[]) {
    this.wanted = texts.flatMap((text) =>
      [...formsOf(text)].map(([form, bytes]) => ({
        text,
        form,
        exact: bytes,
        // Case carries meaning in base64: folding it would find what is not there.
        folded: form.startsWith('base64') ? null : folded(bytes),
      })),
    );
  }

  inBytes(where: string, given: Buffer): string[] {
    // Databases make files longer than they need yet.
    const bytes = given.subarray(0, given.findLastIndex((byte) => byte !== 0) + 1);
    const lower = folded(bytes);
    return this.wanted
      .filter(({ exact, folded: low }) => (low === null ? bytes.includes(exact) : lower.includes(low)))
      .map(({ text, form }) => `${where} holds "${text}" as ${form}`);
  }

  /** Every file below a folder. */
  inFolder(folder: string): string[] {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => statSync(join(folder, file)).isFile())
      .flatMap((file) => this.inBytes(file, readFileSync(join(folder, file))));
  }
}
