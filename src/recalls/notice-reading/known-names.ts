/** Finds the names of makers, products and shades of the register in a text, in one pass over its words. */
import type { KnownProduct } from './notice-reading.js';
import { plainWord, type Token } from './tokens.js';

export type NameKind = 'maker' | 'product' | 'shade';

export interface NameMention {
  kind: NameKind;
  from: number;
  /** The token after it. */
  next: number;
  /** Places in the list of known products whose name this is. */
  products: number[];
}

interface Node {
  words: Map<string, Node>;
  names: { kind: NameKind; products: number[] }[];
}

/** Names have at most this many words, longer ones are looked for by their beginning. */
const longestName = 12;

export class KnownNames {
  private readonly root: Node = { words: new Map(), names: [] };

  constructor(readonly products: readonly KnownProduct[]) {
    for (const [index, product] of products.entries()) {
      this.plant('maker', product.makerName, index);
      this.plant('product', product.productName, index);
      if (product.shade !== null) this.plant('shade', product.shade, index);
    }
  }

  /** The longest name that begins at a token; of several kinds of one length each is given. */
  at(tokens: readonly Token[], index: number): NameMention[] {
    const first = tokens[index]?.plain ?? '';
    if (this.root.words.size === 0 || (!this.root.words.has(first) && !/[^\p{L}\p{N}]/u.test(first)))
      return [];
    let node: Node | undefined = this.root;
    let best: { node: Node; next: number } | null = null;
    for (let at = index, words = 0; words < longestName; at++) {
      const token = tokens[at];
      if (
        token === undefined ||
        token.kind === 'line end' ||
        token.kind === 'blank line' ||
        token.text.length > 80
      )
        break;
      if (token.kind === 'sign') {
        if (at === index || !/^[-.'/&+]$/.test(token.text)) break;
        continue;
      }
      for (const word of /^[a-z0-9]+$/.test(token.plain) ? [token.plain] : wordsOf(token.text)) {
        node = node?.words.get(word);
        words += 1;
      }
      if (node === undefined || node === this.root) break;
      if (node.names.length > 0) best = { node, next: at + 1 };
    }
    if (best === null) return [];
    const { next } = best;
    return best.node.names.map(({ kind, products }) => ({ kind, from: index, next, products }));
  }

  private plant(kind: NameKind, name: string, product: number): void {
    const words = wordsOf(name).slice(0, longestName);
    if (words.join('').length < 3) return;
    let node = this.root;
    for (const word of words) {
      let next = node.words.get(word);
      if (next === undefined) {
        next = { words: new Map(), names: [] };
        node.words.set(word, next);
      }
      node = next;
    }
    const same = node.names.find((entry) => entry.kind === kind);
    if (same) same.products.push(product);
    else node.names.push({ kind, products: [product] });
  }
}

/** The words of a name, as they are compared. */
export function wordsOf(name: string): string[] {
  return plainWord(name)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
