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

/** Spreads four bytes over the places of a table, so that texts that begin alike do not fill one part of it. */
const placeOf = (beginning: number) => Math.imul(beginning, 0x9e3779b1) >>> 12;

/** Finds which of many needles stand somewhere in bytes in one reading of them, however many needles there are. */
class Needles {
  /** Whether any needle may begin with four bytes: nearly every place of a file is passed by at once. */
  private readonly beginnings = new Uint8Array(1 << 20);
  private readonly byBeginning = new Map<number, { index: number; bytes: Buffer }[]>();
  /** Too short to have a beginning. */
  private readonly short: { index: number; bytes: Buffer }[] = [];

  add(index: number, bytes: Buffer): void {
    if (bytes.length < 4) {
      this.short.push({ index, bytes });
      return;
    }
    const beginning = bytes.readInt32LE(0);
    this.beginnings[placeOf(beginning)] = 1;
    const others = this.byBeginning.get(beginning);
    if (others === undefined) this.byBeginning.set(beginning, [{ index, bytes }]);
    else others.push({ index, bytes });
  }

  /** Adds the indices of those found. */
  find(bytes: Buffer, found: Set<number>): void {
    for (const { index, bytes: needle } of this.short) if (bytes.includes(needle)) found.add(index);
    let beginning = 0;
    for (let at = 0; at < bytes.length; at += 1) {
      beginning = (beginning >>> 8) | ((bytes[at] ?? 0) << 24);
      if (at < 3 || this.beginnings[placeOf(beginning)] === 0) continue;
      for (const { index, bytes: needle } of this.byBeginning.get(beginning) ?? []) {
        if (standsAt(needle, bytes, at - 3)) found.add(index);
      }
    }
  }
}

function standsAt(needle: Buffer, bytes: Buffer, start: number): boolean {
  for (let at = 4; at < needle.length; at += 1) if (needle[at] !== bytes[start + at]) return false;
  return true;
}

/** Searches bytes for texts in any form and case, and says where which was found. */
export class TextSearch {
  private readonly wanted: { text: string; form: string }[] = [];
  private readonly exact = new Needles();
  private readonly inAnyCase = new Needles();

  constructor(texts: readonly string[]) {
    for (const text of texts) {
      for (const [form, bytes] of formsOf(text)) {
        const index = this.wanted.push({ text, form }) - 1;
        // Case carries meaning in base64: folding it would find what is not there.
        if (form.startsWith('base64')) this.exact.add(index, bytes);
        else this.inAnyCase.add(index, folded(bytes));
      }
    }
  }

  inBytes(where: string, given: Buffer): string[] {
    // Databases make files longer than they need yet.
    let length = given.length;
    while (length > 0 && given[length - 1] === 0) length -= 1;
    const bytes = given.subarray(0, length);
    const found = new Set<number>();
    this.exact.find(bytes, found);
    this.inAnyCase.find(folded(bytes), found);
    return this.wanted
      .filter((_, index) => found.has(index))
      .map(({ text, form }) => `${where} holds "${text}" as ${form}`);
  }

  /** Every file below a folder. */
  inFolder(folder: string): string[] {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => statSync(join(folder, file)).isFile())
      .flatMap((file) => this.inBytes(file, readFileSync(join(folder, file))));
  }
}
