/** Rows of a table: each is a product with its lots, or further lots of the one above. */
import type { DraftItem, DraftName } from './draft-scope.js';
import type { LabelRole } from './label-words.js';
import { mayBeCode } from './lot-codes.js';
import { tidyName } from './notice-names.js';
import type { TableLine } from './notice-tables.js';
import type { NumberReader } from './number-reader.js';
import type { ProductReader } from './product-reader.js';
import { type ReadingState, spanOver } from './reading-state.js';
import { plainWord } from './tokens.js';
import { printedSpan } from './written-dates.js';

export class TableReader {
  constructor(
    private readonly state: ReadingState,
    private readonly products: ProductReader,
    private readonly numbers: NumberReader,
    private readonly run: (from: number, to: number) => void,
  ) {}

  readTable(columns: (LabelRole | null)[], rows: TableLine[], next: number): number {
    const byName = new Map<string, DraftItem>();
    const [base] = this.state.scope.targets;
    let previous: DraftItem[] = this.state.scope.targets;
    const names = columns.some(
      (role) => role === 'product' || role === 'shade' || role === 'maker' || role === 'gtin',
    );
    for (const row of rows) {
      this.state.endList();
      this.state.flushLead();
      if (names) {
        const item = this.itemOfRow(columns, row, byName, base);
        if (item !== null) previous = [item];
      }
      this.state.setTargets(previous);
      for (const role of ['lot', 'use-by', 'manufactured', 'other number'] as const) {
        columns.forEach((column, place) => {
          const cell = row[place];
          if (column === role && cell !== undefined && role !== 'other number')
            this.readCell(role, cell.from, cell.to);
        });
      }
    }
    this.state.endList();
    this.state.flushLead();
    this.state.scope.forgetWaiting();
    this.state.atLineStart = true;
    return next;
  }

  private itemOfRow(
    columns: (LabelRole | null)[],
    row: TableLine,
    byName: Map<string, DraftItem>,
    base: DraftItem | undefined,
  ): DraftItem | null {
    const cell = (role: LabelRole): DraftName | null => {
      const place = columns.indexOf(role);
      const found = place < 0 ? undefined : row[place];
      return found === undefined ? null : tidyName(this.state.tokens, found.from, found.to);
    };
    const [maker, product, shade, number] = [cell('maker'), cell('product'), cell('shade'), cell('gtin')];
    const key = [maker, product, shade, number].map((name) => plainWord(name?.text ?? '')).join('|');
    if (key === '|||') return null;
    const known = byName.get(key);
    if (known !== undefined) return known;
    const free =
      byName.size === 0 &&
      base !== undefined &&
      base.terms.length === 0 &&
      base.product === null &&
      base.gtins.length === 0;
    const last = [...byName.values()].at(-1);
    const item = free ? base : this.state.scope.newItem(null);
    byName.set(key, item);
    item.maker = maker ?? item.maker ?? base?.maker ?? null;
    // An empty cell below a product stands for the product above it.
    item.product =
      product ?? (columns.includes('product') ? (last?.product ?? null) : (base?.product ?? null));
    item.shade = shade;
    if (product === null && last !== undefined) item.mentions.push(...last.mentions);
    this.state.setTargets([item]);
    for (const [kind, name] of [
      ['maker', maker],
      ['product', product],
      ['shade', shade],
    ] as const) {
      if (name !== null)
        this.state.scope.part(kind, name.start, name.end, name.text, this.state.scope.ofItems([item]));
    }
    for (const role of ['maker', 'product', 'shade'] as const) {
      const found = row[columns.indexOf(role)];
      if (found !== undefined) this.products.firstNameWithin(found.from, found.to);
    }
    const digits = columns.indexOf('gtin');
    const found = row[digits];
    if (found !== undefined) {
      const read = this.numbers.numberAt(found.from);
      if (read?.gtin)
        this.numbers.addGtin(
          read.gtin,
          this.state.tokens[found.from]?.start ?? 0,
          this.state.tokens[read.next - 1]?.end ?? 0,
        );
      else if (read !== null)
        this.state.context.remarks.add('number not a GTIN', this.state.spanOfTokens(found.from, found.to));
    }
    return item;
  }

  private readCell(role: 'lot' | 'use-by' | 'manufactured', from: number, to: number): void {
    const first = this.state.tokens[from];
    if (first === undefined || to <= from) return;
    if (role === 'lot') {
      if (/^(?:all|alle|tous|todos|toutes|any)$/i.test(first.text)) {
        const end = this.state.tokens[to - 1]?.end ?? first.end;
        this.state.scope.part(
          'all lots',
          first.start,
          end,
          this.state.folded(first.start, end),
          this.state.scope.addTerm({ kind: 'all lots' }, false),
        );
        return;
      }
      this.state.inList = true;
      this.state.expected = 'any';
      this.state.codesSinceLabel = 0;
      this.state.separatorSinceCode = true;
      this.state.lapsed = false;
      this.state.atLineStart = false;
      this.run(from, to);
      this.state.inList = false;
      return;
    }
    const dates = this.state.dates(from);
    if (dates === null || dates.from >= to) {
      if (mayBeCode(first))
        this.state.context.remarks.add('date not read', this.state.spanOfTokens(from, to));
      return;
    }
    this.state.remarkDates(dates);
    const start = this.state.tokens[dates.from]?.start ?? 0;
    const end = this.state.tokens[dates.next - 1]?.end ?? start;
    const span = spanOver(dates.spans);
    const waiting = this.state.scope.waiting(true);
    if (waiting.length > 0 && role === 'use-by') this.state.scope.bind(waiting, span);
    const targets =
      waiting.length > 0
        ? waiting
        : this.state.scope.addTerm(
            role === 'use-by'
              ? { kind: 'use-by', useBy: span }
              : { kind: 'manufactured', manufactured: span },
            false,
          );
    this.state.scope.part(role, start, end, printedSpan(span), targets);
  }
}
