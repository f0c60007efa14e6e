/**
 * A scope while it is being read: items with their lots, which of them are meant at the moment, and which lots still
 * wait for an expiry. An expiry binds to the group before it.
 */
import type { DaySpan, LotScope, LotTerm, ScopeItem } from '../../stock/lot-matching/lot-scope.js';
import type { PartTarget, ReadPartKind } from './notice-reading.js';
import { earlier, later } from './written-dates.js';

export interface DraftName {
  text: string;
  start: number;
  end: number;
}

export interface DraftTerm {
  term: LotTerm;
  /** Of which group of the list it is: codes between two semicolons, on one line. */
  group: number;
  /** It stands in several groups, so that the expiry of one would narrow the other. */
  twice?: true;
}

export interface DraftItem {
  /** The number it has in the notice: `1)`, `a)`. */
  key: string | null;
  maker: DraftName | null;
  product: DraftName | null;
  shade: DraftName | null;
  gtins: string[];
  terms: DraftTerm[];
  /** Where each term stands, by what it says: a lot that is named twice is one lot. */
  known: Map<string, DraftTerm>;
  openEnded: boolean;
  /** Names of the register that stand in its part of the text. */
  mentions: number[];
}

export interface DraftPart {
  kind: ReadPartKind;
  start: number;
  end: number;
  value: string;
  targets: { item: DraftItem; term: DraftTerm | null }[];
}

/** More expiries beside the same lots than this are terms of their own. */
const mostWidenings = 50;

export class DraftScope {
  readonly items: DraftItem[] = [];
  readonly parts: DraftPart[] = [];
  /** The items that what is read now belongs to. */
  targets: DraftItem[];
  group = 0;
  termsLeftOut = 0;
  itemsLeftOut = 0;
  private termCount = 0;
  /** Lots that no expiry was bound to yet, by their group. */
  private readonly pending = new Map<number, Map<DraftTerm, DraftItem>>();
  private lastAdded: DraftPart['targets'] = [];
  /** The group that a lot was last read in. */
  private groupOfLast = -1;
  /** What the last expiry was bound to, for further expiries beside it. */
  private bound: DraftPart['targets'] = [];
  private widenings = 0;

  constructor(private readonly limits: { terms: number; items: number; parts: number }) {
    this.targets = [this.newItem(null)];
  }

  /** A further item; beyond the limit the last one is given, which is then open-ended. */
  newItem(key: string | null, like?: DraftItem): DraftItem {
    const last = this.items[this.items.length - 1];
    if (this.items.length >= this.limits.items && last !== undefined) {
      last.openEnded = true;
      this.itemsLeftOut += 1;
      return last;
    }
    const item: DraftItem = {
      key,
      maker: like?.maker ?? null,
      product: like?.product ?? null,
      shade: null,
      gtins: [],
      terms: [],
      known: new Map(),
      openEnded: false,
      mentions: [],
    };
    this.items.push(item);
    return item;
  }

  part(
    kind: ReadPartKind,
    start: number,
    end: number,
    value: string,
    targets: DraftPart['targets'],
  ): DraftPart {
    const part = { kind, start, end, value, targets };
    if (this.parts.length < this.limits.parts) this.parts.push(part);
    return part;
  }

  /** The items as targets of a part. */
  ofItems(items: readonly DraftItem[] = this.targets): DraftPart['targets'] {
    return items.map((item) => ({ item, term: null }));
  }

  /** Adds a lot to each item that is meant. Lots that take an expiry wait for one. */
  addTerm(term: LotTerm, waits: boolean): DraftPart['targets'] {
    const targets: DraftPart['targets'] = [];
    for (const item of this.targets) {
      const key = JSON.stringify(term);
      let draft = item.known.get(key);
      if (draft === undefined) {
        if (this.termCount >= this.limits.terms) {
          this.termsLeftOut += 1;
          item.openEnded = true;
          continue;
        }
        this.termCount += 1;
        draft = { term: { ...term }, group: this.group };
        item.terms.push(draft);
        item.known.set(key, draft);
      }
      if (waits) this.wait(item, draft);
      targets.push({ item, term: draft });
    }
    if (waits) {
      this.lastAdded = targets;
      this.groupOfLast = this.group;
    }
    return targets;
  }

  private wait(item: DraftItem, draft: DraftTerm): void {
    if (this.pending.get(draft.group)?.has(draft)) {
      if (draft.group !== this.group) draft.twice = true;
      return;
    }
    draft.group = this.group;
    let group = this.pending.get(this.group);
    if (group === undefined) {
      group = new Map();
      this.pending.set(this.group, group);
    }
    group.set(draft, item);
  }

  get hasPending(): boolean {
    return this.pending.size > 0;
  }

  /** Lots that wait for an expiry: those of the group being read or, when it has none or all are meant, all. */
  waiting(all: boolean): DraftPart['targets'] {
    const inGroup = all ? undefined : this.pending.get(this.group);
    // Those of this group stand in an earlier one too, and keep what was said there.
    if (!all && inGroup === undefined && this.groupOfLast === this.group) return [];
    const groups = inGroup === undefined || inGroup.size === 0 ? [...this.pending.values()] : [inGroup];
    return groups.flatMap((group) => [...group].map(([term, item]) => ({ item, term })));
  }

  /** The lot that was read last, and it alone. */
  lastWaiting(): DraftPart['targets'] {
    return this.lastAdded.filter(({ term }) => term !== null && this.pending.get(term.group)?.has(term));
  }

  /** Binds an expiry to lots; they wait no longer. */
  bind(targets: DraftPart['targets'], useBy: DaySpan): void {
    for (const { item, term: draft } of targets) {
      if (draft === null) continue;
      widenUseBy(item, draft, useBy);
      const group = this.pending.get(draft.group);
      group?.delete(draft);
      if (group?.size === 0) this.pending.delete(draft.group);
    }
    this.bound = targets;
    this.widenings = 0;
  }

  /** A further expiry for what one was bound to just before: the span grows over both. */
  widenBound(useBy: DaySpan): DraftPart['targets'] {
    this.widenings += 1;
    for (const { item, term } of this.bound) if (term !== null) widenUseBy(item, term, useBy);
    return [...this.bound];
  }

  get hasBound(): boolean {
    return this.bound.length > 0 && this.widenings < mostWidenings;
  }

  /** What comes now takes no part in earlier expiries, nor the earlier lots in later ones. */
  forgetWaiting(): void {
    this.pending.clear();
    this.bound = [];
  }

  forgetBound(): void {
    this.bound = [];
  }

  /** The scope as it is handed out, and where each item and lot stands in it. */
  finish(kept: readonly DraftItem[], describe: (item: DraftItem) => Pick<ScopeItem, 'productIds'>): LotScope {
    return {
      items: kept.map((item) => ({
        makerName: item.maker?.text ?? null,
        productName: item.product?.text ?? null,
        shade: item.shade?.text ?? null,
        gtins: [...new Set(item.gtins)],
        productIds: describe(item).productIds,
        lots: item.terms.map(({ term }) => term),
        openEnded: item.openEnded,
      })),
    };
  }
}

/** Targets of parts as places in the scope. */
export function placesOf(kept: readonly DraftItem[]): (targets: DraftPart['targets']) => PartTarget[] {
  const items = new Map(kept.map((item, index) => [item, index]));
  const terms = new Map<DraftItem, Map<DraftTerm, number>>();
  for (const item of kept) terms.set(item, new Map(item.terms.map((term, index) => [term, index])));
  return (targets) => {
    const places: PartTarget[] = [];
    for (const { item, term } of targets) {
      const index = items.get(item);
      if (index === undefined) continue;
      const lot = term === null ? null : terms.get(item)?.get(term);
      if (lot !== undefined) places.push({ item: index, lot });
    }
    return places;
  };
}

function widenUseBy(item: DraftItem, { term, twice }: DraftTerm, useBy: DaySpan): void {
  if (twice) return;
  if (term.kind !== 'code' && term.kind !== 'code range') return;
  const draft = item.known.get(JSON.stringify(term));
  item.known.delete(JSON.stringify(term));
  term.useBy = term.useBy === null ? useBy : wider(term.useBy, useBy);
  if (draft !== undefined) item.known.set(JSON.stringify(term), draft);
}

function wider(one: DaySpan, other: DaySpan): DaySpan {
  return {
    from: one.from === null || other.from === null ? null : earlier(one.from, other.from),
    through: one.through === null || other.through === null ? null : later(one.through, other.through),
  };
}
