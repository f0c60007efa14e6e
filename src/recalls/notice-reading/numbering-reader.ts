/** Numbered lists: which products what follows a number belongs to. */
import type { DraftItem } from './draft-scope.js';
import type { ReadingState } from './reading-state.js';
import type { Token } from './tokens.js';

export class NumberingReader {
  constructor(private readonly state: ReadingState) {}

  number(keys: string[], token: Token): void {
    this.state.naming = this.state.namingList;
    const first = Number(keys[0]);
    if (Number.isInteger(first)) {
      if (first <= this.state.lastNumber && first !== 1) this.unclear(token);
      else if (first === 1 && this.state.lastNumber > 0 && this.state.inList) this.unclear(token);
      this.state.lastNumber = Number(keys[keys.length - 1]);
    }
    const items = keys.map((key) => this.itemOf(key));
    this.state.setTargets([...new Set(items)]);
    this.state.lapsed = false;
    if (this.state.inList || this.state.listOpen) {
      this.state.expected = 'any';
      this.state.codesSinceLabel = 0;
    }
    this.state.separatorSinceCode = true;
  }

  private unclear(token: Token): void {
    if (!this.state.result.numberingUnclear)
      this.state.context.remarks.add('numbering unclear', this.state.rawSpan(token.start, token.end));
    this.state.result.numberingUnclear = true;
  }

  private itemOf(key: string): DraftItem {
    const known = this.state.scope.items.find((item) => item.key === key);
    if (known !== undefined) return known;
    const base = this.state.scope.items.find((item) => item.key === null && item.terms.length === 0);
    if (base !== undefined && base.product === null && base.gtins.length === 0) {
      base.key = key;
      return base;
    }
    const like = base ?? this.state.scope.targets[0];
    const item = this.state.scope.newItem(key, this.state.naming ? undefined : like);
    item.maker = like?.maker ?? null;
    if (!this.state.naming && like !== undefined) item.mentions.push(...like.mentions);
    if (base !== undefined && !this.state.naming) base.key = 'replaced';
    return item;
  }

  /** `A1, 5)`: a code before a closing bracket is no number of a list. */
  isLoneCode(index: number, next: number): boolean {
    if (!this.state.inList || this.state.tokens[index]?.text === '(') return false;
    const before = this.state.tokens[index - 1]?.text;
    const after = this.state.tokens[next];
    const stands = after === undefined || after.kind === 'line end' || after.kind === 'blank line';
    return before === ',' && stands;
  }
}
