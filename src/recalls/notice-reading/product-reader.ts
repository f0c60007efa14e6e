/** Makers, products and shades: behind labels, before lots, in lists, and names of the register in running text. */
import type { DraftItem, DraftName } from './draft-scope.js';
import { hasDigit, type LabelHit } from './label-words.js';
import { mayBeCode } from './lot-codes.js';
import { numberingAt } from './notice-marks.js';
import { nameBefore, namesInList, restOfLine, tidyName } from './notice-names.js';
import { isBullet, type ReadingState } from './reading-state.js';
import { plainWord } from './tokens.js';

const brandLabels = /^(?:brand|marke|marque|marca|merk)/;
const makerLabels = /^(?:maker|manufactur|hersteller|fabri|legal|produttore|hergestellt|made)/;
const pluralLabels =
  /^(?:products|items|produkte|produits|productos|affected products|affected items|recalled products|betroffene produkte|shades|colours|colors|farbtone|teintes|tonos)/;

export class ProductReader {
  constructor(private readonly state: ReadingState) {}

  makerLabel(index: number, label: LabelHit): number {
    const words = plainWord(
      this.state.folded(this.state.tokens[index]?.start ?? 0, this.state.tokens[label.last]?.end ?? 0),
    );
    const rank = brandLabels.test(words) ? 3 : makerLabels.test(words) ? 2 : 1;
    const name = restOfLine(this.state.tokens, label.next, (at) => this.state.beginsField(at), {
      untilComma: rank === 1,
      most: 20,
    });
    this.state.endList();
    if (name === null) return label.next;
    const [item] = this.state.scope.targets;
    if (item !== undefined && item.terms.length > 0) {
      const next = this.state.scope.newItem(null);
      this.state.setTargets([next]);
      this.state.makerRank = 0;
    }
    this.setMaker(name, rank);
    return name.next;
  }

  private setMaker(name: DraftName, rank: number): void {
    if (this.state.scope.targets.some((item) => item.maker !== null) && rank <= this.state.makerRank) return;
    this.state.makerRank = rank;
    for (const item of this.state.scope.targets) item.maker = name;
    this.state.scope.part('maker', name.start, name.end, name.text, this.state.scope.ofItems());
  }

  /** "Manufactured by Northlight Ltd": a maker, where no label names one. */
  manufacturedBy(_index: number, label: LabelHit): number {
    const by = this.state.tokens[label.next]?.plain ?? '';
    if (by !== 'by' && by !== 'von' && by !== 'par' && by !== 'por') {
      if (this.state.inList && this.state.codesSinceLabel > 0) this.state.lapse();
      return label.next;
    }
    const name = restOfLine(
      this.state.tokens,
      label.next + 1,
      (at) => this.state.context.marks.labels.has(at),
      {
        untilComma: true,
        most: 8,
      },
    );
    if (name !== null && this.state.makerRank === 0) this.setMaker(name, 0);
    this.state.lapse();
    return label.next + 1;
  }

  productLabel(index: number, label: LabelHit): number {
    this.state.endList();
    this.state.flushLead();
    this.state.namedItems = [];
    this.state.lastNumber = 0;
    const words = plainWord(
      this.state.folded(this.state.tokens[index]?.start ?? 0, this.state.tokens[label.last]?.end ?? 0),
    );
    if (numberingAt(this.state.tokens, label.next) !== null) {
      this.state.namingList = true;
      return label.next;
    }
    const name = restOfLine(this.state.tokens, label.next, (at) => this.state.beginsField(at), {
      untilComma: false,
      most: 40,
    });
    if (name === null) {
      this.state.productList = true;
      return label.next;
    }
    const list = pluralLabels.test(words) ? namesInList(name, this.state.context.folded.text) : [name];
    const items = list.map((one) => this.nameProduct(one));
    this.state.setTargets(items);
    this.state.namedItems = items.length > 1 ? items : [];
    return Math.min(name.next, this.firstNameWithin(label.next, name.next));
  }

  /** Names of the register inside a labelled name are noted too. */
  firstNameWithin(from: number, to: number): number {
    for (let at = from; at < to; at++) {
      const names = this.state.context.marks.names.get(at);
      if (names !== undefined)
        for (const name of names) this.noteMention(name.kind, name.products, at, name.next, true);
    }
    return to;
  }

  private nameProduct(name: DraftName): DraftItem {
    const [current] = this.state.scope.targets;
    const free =
      current !== undefined &&
      current.product === null &&
      (current.terms.length === 0 || current.key !== null);
    const lotsFirst =
      current !== undefined &&
      current.product === null &&
      current.terms.length > 0 &&
      this.state.scope.items.length === 1;
    const item = current !== undefined && (free || lotsFirst) ? current : this.itemLike(current);
    item.product = name;
    this.state.scope.part('product', name.start, name.end, name.text, this.state.scope.ofItems([item]));
    return item;
  }

  /** A further product of the same maker. */
  private itemLike(current: DraftItem | undefined): DraftItem {
    const item = this.state.scope.newItem(null);
    item.maker = current?.maker ?? null;
    return item;
  }

  shadeLabel(_index: number, label: LabelHit): number {
    const name = restOfLine(this.state.tokens, label.next, (at) => this.state.beginsField(at), {
      untilComma: false,
      most: 20,
    });
    this.state.endList();
    if (name === null) return label.next;
    const shades = namesInList(name, this.state.context.folded.text);
    const items: DraftItem[] = [];
    for (const shade of shades) {
      const current = this.state.scope.targets[0];
      const free = current !== undefined && current.shade === null && current.terms.length === 0;
      const item =
        free && items.length === 0 && current !== undefined
          ? current
          : this.state.scope.newItem(null, current);
      item.shade = shade;
      if (current !== undefined && item !== current) item.mentions.push(...current.mentions);
      this.state.scope.part('shade', shade.start, shade.end, shade.text, this.state.scope.ofItems([item]));
      items.push(item);
    }
    const earlier = this.state.scope.targets.filter(
      (item) => item.terms.length === 0 && item.shade !== null && !items.includes(item),
    );
    this.state.setTargets([...earlier, ...items]);
    return this.firstNameWithin(label.next, name.next);
  }

  /** The name behind a number of a list of products: up to the end of its first sentence. */
  nameOf(index: number): number {
    this.state.naming = false;
    const name = restOfLine(this.state.tokens, index, (at) => this.state.beginsField(at), {
      untilComma: false,
      most: 40,
      untilSentence: true,
    });
    if (name === null) return index + 1;
    for (const item of this.state.scope.targets) item.product ??= name;
    this.state.scope.part('product', name.start, name.end, name.text, this.state.scope.ofItems());
    return this.firstNameWithin(index, name.next);
  }

  /** A line below "Products:" names one. */
  listedProduct(index: number): number | null {
    const token = this.state.tokens[index];
    if (token === undefined || isBullet(token)) return null;
    const label = this.state.context.marks.labels.get(index);
    if (label !== undefined) {
      this.state.productList = false;
      return null;
    }
    const name = restOfLine(this.state.tokens, index, (at) => this.state.context.marks.labels.has(at), {
      untilComma: false,
      most: 40,
    });
    if (name === null) return null;
    const item = this.nameProduct(name);
    this.state.setTargets([item]);
    this.state.namedItems.push(item);
    if (this.state.context.marks.labels.has(name.next)) this.state.namedItems = [];
    return this.firstNameWithin(index, name.next);
  }

  /** A name before the lot word of a line, in a notice that names its products so. */
  nameByPlace(index: number): void {
    if (!this.state.context.namesByPlace) return;
    const name = nameBefore(this.state.tokens, index, this.state.context.marks);
    if (name === null) return;
    const taken = this.state.scope.targets.some(
      (item) => item.mentions.length > 0 && item.terms.length === 0,
    );
    if (taken) return;
    this.newProductByPlace(name);
  }

  private newProductByPlace(name: DraftName): void {
    const [current] = this.state.scope.targets;
    if (current?.product?.text === name.text) return;
    const free = current !== undefined && current.product === null && current.terms.length === 0;
    const item = free ? current : this.itemLike(current);
    item.product = name;
    this.state.scope.part('product', name.start, name.end, name.text, this.state.scope.ofItems([item]));
    this.state.context.remarks.add('name by its place', this.state.rawSpan(name.start, name.end));
    this.state.setTargets([item]);
  }

  /** A line of a list that begins with a name: `Walnut: A1, A2`. */
  listLine(index: number): number | null {
    const token = this.state.tokens[index];
    if (token === undefined || (mayBeCode(token) && hasDigit(token.text))) return null;
    for (let at = index; at < index + 12; at++) {
      const sign = this.state.tokens[at];
      if (
        sign === undefined ||
        sign.kind === 'line end' ||
        sign.kind === 'blank line' ||
        this.state.context.marks.labels.has(at)
      )
        return null;
      if (at === index || (sign.text !== ':' && !(sign.text === '-' || sign.text === '\u2013'))) continue;
      const code = this.state.tokens[at + 1];
      if (code === undefined || !mayBeCode(code) || !hasDigit(code.text)) continue;
      const name = tidyName(this.state.tokens, index, at);
      if (name === null || hasDigit(token.text)) return null;
      this.newProductByPlace(name);
      this.firstNameWithin(index, at);
      this.state.inList = true;
      this.state.expected = 'any';
      this.state.codesSinceLabel = 0;
      this.state.lapsed = false;
      return at + 1;
    }
    return null;
  }

  mention(
    index: number,
    names: readonly { kind: 'maker' | 'product' | 'shade'; next: number; products: number[] }[],
  ): number {
    let next = index + 1;
    const kinds = new Set(names.map(({ kind }) => kind));
    for (const name of names) {
      next = name.next;
      // One word may be a maker and a shade: the fuller meaning counts.
      if (name.kind === 'shade' && (kinds.has('maker') || kinds.has('product'))) continue;
      if (name.kind === 'maker' && kinds.has('product')) continue;
      this.noteMention(name.kind, name.products, index, next, false);
    }
    if (this.state.inList && this.state.codesSinceLabel > 0) this.state.lapse();
    return next;
  }

  private noteMention(
    kind: 'maker' | 'product' | 'shade',
    products: number[],
    from: number,
    next: number,
    labelled: boolean,
  ): void {
    const start = this.state.tokens[from]?.start ?? 0;
    const end = this.state.tokens[next - 1]?.end ?? start;
    const name = { text: this.state.folded(start, end).replace(/\s+/g, ' '), start, end };
    const [current] = this.state.scope.targets;
    if (current === undefined) return;
    if (!labelled && kind === 'product' && this.startsProduct(current, name.text)) {
      this.state.setTargets([this.itemLike(current)]);
    } else if (!labelled && kind === 'shade') {
      if (!this.isShadeOf(current, products)) return;
      if (current.shade !== null && plainWord(current.shade.text) !== plainWord(name.text)) {
        const item = this.state.scope.newItem(null, current);
        item.mentions.push(...current.mentions);
        if (current.terms.length > 0) this.state.setTargets([item]);
        else this.state.setTargets([...this.state.scope.targets, item]);
      }
    }
    for (const item of this.state.scope.targets) this.mentionIn(item, kind, name, products, labelled);
    if (!labelled) {
      const named = this.state.scope.targets.filter((item) => item[kind]?.start === start);
      if (named.length > 0)
        this.state.scope.part(kind, start, end, name.text, this.state.scope.ofItems(named));
    }
  }

  private mentionIn(
    item: DraftItem,
    kind: 'maker' | 'product' | 'shade',
    name: DraftName,
    products: number[],
    labelled: boolean,
  ): void {
    if (kind !== 'maker' || item.mentions.length === 0)
      item.mentions.push(...(kind === 'maker' ? [] : products));
    if (labelled && kind === 'product') return;
    item[kind] ??= name;
  }

  /** Another product than the one whose lots were just read, or than the one just named. */
  private startsProduct(current: DraftItem, name: string): boolean {
    if (current.product === null) return current.terms.length > 0 && this.state.scope.items.length > 1;
    return current.terms.length > 0 && !plainWord(current.product.text).includes(plainWord(name));
  }

  private isShadeOf(item: DraftItem, products: readonly number[]): boolean {
    return (
      item.product !== null &&
      (item.mentions.length === 0 || products.some((product) => item.mentions.includes(product)))
    );
  }
}
