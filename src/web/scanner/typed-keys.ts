/** The separator between the parts of a GS1 symbol, as readers send it: GS, 0x1D. */
export const separator = '\u001d';

/** A key as the browser tells it, as far as it matters here. */
export interface TypedKey {
  /** Whether it goes down; else it comes up. */
  down: boolean;
  /** What it means by the layout of the keyboard. */
  key: string;
  /** Which key it is by its place. */
  code: string;
  control: boolean;
  alt: boolean;
  /** Command or Windows. */
  meta: boolean;
}

/** What a key means to a field that takes scans; `other` is left to the browser. */
export type KeyMeaning = 'separator' | 'character' | 'other';

/**
 * Reads keys as hand-held scanners press them. Browsers drop the separator where it is typed, so it is told by how
 * scanners send it: Ctrl and ], F8, or Alt held while 029 is typed at the block of digits.
 * @param altDigits the digits typed since Alt is held, as the key before answered
 */
export function readKey(altDigits: string, typed: TypedKey): { altDigits: string; means: KeyMeaning } {
  const { down, key, code, control, alt, meta } = typed;
  if (!down) {
    if (key !== 'Alt') return { altDigits, means: 'other' };
    return { altDigits: '', means: altDigits === '029' || altDigits === '29' ? 'separator' : 'other' };
  }
  if (alt && !control) {
    const digit = /^Numpad(\d)$/.exec(code)?.[1] ?? '';
    return { altDigits: altDigits + digit, means: 'other' };
  }
  if (key === 'F8' || key === separator || (control && !alt && isBracket(key, code))) {
    return { altDigits: '', means: 'separator' };
  }
  // With Ctrl and Alt together some layouts type characters, such as the square bracket itself.
  const isCommand = meta || (control && !alt);
  return { altDigits: '', means: !isCommand && [...key].length === 1 ? 'character' : 'other' };
}

/** By its place only where the layout does not make it the key that enlarges the page. */
function isBracket(key: string, code: string): boolean {
  return key === ']' || (code === 'BracketRight' && key !== '+');
}
