import { useCallback, useEffect, useRef, useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import type { SymbolView } from '../../catalogue/symbols.views.js';
import { readSymbol } from '../catalogue/catalogue.requests.js';
import { ServiceProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import type { KeptDelivery } from './delivery-draft.js';
import { changedLine, type LineDraft, newLine } from './line-draft.js';
import { meantLine } from './meant-line.js';
import { goodsInSymbol } from './scanned-goods.js';

/** What came of the last scan; `doubts` say why a text is not what it looks like, such as a number with a slip. */
export type ScanOutcome =
  | { kind: 'new line' | 'asked' | 'one more' | 'same piece'; key: string; doubts?: readonly string[] }
  | { kind: 'own label'; labelCode: string; symbol: SymbolView }
  | { kind: 'unreadable'; symbol: SymbolView }
  | { kind: 'no goods' };

/**
 * Reads what is scanned, one after the other: who scans on while the service still reads loses nothing, and what could not
 * be read for want of an answer waits in the draft.
 */
export function useReadings(studioId: string, delivery: KeptDelivery) {
  const [last, setLast] = useState<ScanOutcome>();
  const { run, busy, problem } = useAction(async () => {
    for (let next = delivery.read().unread[0]; next !== undefined; next = delivery.read().unread[0]) {
      try {
        setLast(await enter(studioId, delivery, next));
      } catch (error) {
        if (!isRefusal(error)) throw error;
        dropFirst(delivery);
        throw error;
      }
      dropFirst(delivery);
    }
  });
  const show = useCallback(
    (text: string) => {
      delivery.change(({ unread }) => ({ unread: [...unread, text] }));
      void run();
    },
    [delivery, run],
  );
  const began = useRef(false);
  useEffect(() => {
    // What waited when the page was left.
    if (began.current) return;
    began.current = true;
    if (delivery.read().unread.length > 0) void run();
  }, [delivery, run]);
  /** Takes a symbol that looks like one of our own labels for the maker's. */
  const takeForMakers = useCallback(
    (symbol: SymbolView) => setLast(enterGoods(delivery, symbol, symbol.product, symbol.contentCount)),
    [delivery],
  );
  return { last, busy, problem, show, sendAgain: () => void run(), takeForMakers };
}

async function enter(studioId: string, delivery: KeptDelivery, text: string): Promise<ScanOutcome> {
  const symbol = await readSymbol(studioId, text);
  if (symbol.kind === 'own label') return { kind: 'own label', labelCode: symbol.labelCode ?? '', symbol };
  if (symbol.kind === 'invalid') return { kind: 'unreadable', symbol };
  if (symbol.kind === 'plain text') return enterText(delivery, symbol);
  const goods = goodsInSymbol(symbol);
  if (goods.gtin === null && goods.lotCode === null) return { kind: 'no goods' };
  if (goods.gtin === null || goods.gtin === symbol.gtin) {
    return enterGoods(delivery, symbol, symbol.product, symbol.contentCount);
  }
  // The number stands for the content, so what it belongs to is asked for by itself.
  const content = await readSymbol(studioId, goods.gtin);
  return enterGoods(delivery, symbol, content.product, content.contentCount);
}

function enterGoods(
  delivery: KeptDelivery,
  symbol: SymbolView,
  product: SymbolView['product'],
  contentCount: number | null,
): ScanOutcome {
  const scanned = goodsInSymbol(symbol);
  const meant = meantLine(scanned, delivery.read().lines, delivery.serials);
  if (meant.kind === 'new line') {
    const line = newLine(uuidv7(), { scanned, product, contentCount });
    noteSerial(delivery, line.key, scanned.serial);
    delivery.putInFront(line);
    return { kind: 'new line', key: line.key };
  }
  const line = delivery.read().lines.find(({ key }) => key === meant.key);
  if (!line) return meant;
  if (meant.kind === 'asked') delivery.putInFront({ ...line, again: line.again + 1 });
  if (meant.kind === 'one more') {
    noteSerial(delivery, line.key, scanned.serial);
    delivery.putInFront(oneMore(line, 1));
  }
  return meant;
}

/** A code without a number: most likely the lot, since that is what stands on small bottles. */
function enterText(delivery: KeptDelivery, symbol: SymbolView): ScanOutcome {
  const lotCode = symbol.text.trim().slice(0, 60);
  const known = delivery
    .read()
    .lines.find((line) => (line.scanned?.lotCode ?? line.lotCode.trim()) === lotCode);
  if (known) {
    delivery.putInFront({ ...known, again: known.again + 1 });
    return { kind: 'asked', key: known.key };
  }
  const line = newLine(uuidv7(), { lotCode });
  delivery.putInFront(line);
  return { kind: 'new line', key: line.key, doubts: symbol.faults.map(({ message }) => message) };
}

export function oneMore(line: LineDraft, count: number): LineDraft {
  return changedLine(line, { quantity: String((Number(line.quantity) || 0) + count) });
}

function noteSerial(delivery: KeptDelivery, key: string, serial: string | null): void {
  if (serial !== null) delivery.serials.set(key, [...(delivery.serials.get(key) ?? []), serial]);
}

function dropFirst(delivery: KeptDelivery): void {
  delivery.change(({ unread }) => ({ unread: unread.slice(1) }));
}

const passing: ReadonlySet<string> = new Set(['unreachable', 'sign-in-needed', 'too-many-requests']);

/** Sent again it would be answered the same. */
function isRefusal(error: unknown): boolean {
  return error instanceof ServiceProblem && error.document.status < 500 && !passing.has(error.code);
}
