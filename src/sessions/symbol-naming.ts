import type { SymbolReading } from '../catalogue/barcode.js';
import type { Named } from './meant-container.js';

/** What has to be looked up before it is known what a symbol names. */
export interface SoughtBySymbol {
  labelCode: string | null;
  gtin: string | null;
  lotCodes: readonly string[];
}

/** What of the record answers to it: more than was sought does no harm. */
export interface FoundGoods {
  labels: readonly { code: string; containerId: string; lotId: string; productId: string }[];
  gtins: readonly { gtin: string; productId: string; contentCount: number }[];
  lotCodes: readonly { code: string; lotId: string; productId: string; useBy: string | null }[];
}

export type SymbolNaming =
  | {
      kind: 'named';
      /** How the symbol is read here. */
      reading: SymbolReading;
      named: Named;
      /** Pieces in the package whose product number the symbol bears; null when it bears none. */
      contentCount: number | null;
    }
  /** The symbol itself is faulty. */
  | { kind: 'unusable'; detail: string }
  /** It is sound, but nothing here has it. */
  | { kind: 'unknown'; detail: string; facts: Record<string, string | null> };

/** What to look for; a label is sought by whatever else the symbol says as well, in case it is another company's. */
export function soughtBy(reading: SymbolReading): SoughtBySymbol {
  switch (reading.kind) {
    case 'own label':
    case 'gs1':
      return {
        labelCode: reading.kind === 'own label' ? reading.code : null,
        gtin: gtinOf(reading) ?? null,
        lotCodes: [reading.lotCode ?? [], reading.kind === 'own label' ? asTyped(reading.text) : []].flat(),
      };
    case 'product only':
      return { labelCode: null, gtin: reading.gtin14, lotCodes: [] };
    case 'plain text':
      return { labelCode: null, gtin: null, lotCodes: asTyped(reading.text) };
    case 'invalid':
      return { labelCode: null, gtin: null, lotCodes: [] };
  }
}

/**
 * What a symbol names of the goods that were found. A label that was never printed here is another company's: one foreign
 * text of that length in about thirty passes the label's check by chance. Then it is read as what it is besides.
 */
export function namedBy(given: SymbolReading, found: FoundGoods): SymbolNaming {
  const reading = asKnownHere(given, found);
  const named = (
    { contentCount, ...goods }: Omit<Named, 'containerId'> & { contentCount: number | null },
    containerId: string | null = null,
  ): SymbolNaming => ({ kind: 'named', reading, named: { ...goods, containerId }, contentCount });
  switch (reading.kind) {
    case 'invalid':
      return {
        kind: 'unusable',
        detail: `The symbol cannot be used: ${reading.errors[0]?.message ?? 'it holds nothing'} Scan it again, or type the lot code.`,
      };
    case 'own label': {
      const label = found.labels.find(({ code }) => code === reading.code);
      if (!label) {
        return unknown(`The label ${reading.code} belongs to nothing in this studio.`, {
          labelCode: reading.code,
        });
      }
      return named(
        { productIds: [label.productId], lotIds: [label.lotId], contentCount: null },
        label.containerId,
      );
    }
    case 'product only': {
      const product = productOf(reading.gtin14, found);
      return product ? named({ ...product, lotIds: null }) : unknownGtin(reading.gtin14);
    }
    case 'gs1': {
      const gtin = gtinOf(reading);
      if (gtin === undefined)
        return unknown('This symbol names no product (it has neither AI 01 nor AI 02).');
      const product = productOf(gtin, found);
      if (!product) return unknownGtin(gtin);
      const { lotCode } = reading;
      if (lotCode === undefined) return named({ ...product, lotIds: null });
      const lots = found.lotCodes.filter(
        (lot) => lot.code === lotCode && product.productIds.includes(lot.productId),
      );
      if (lots.length === 0) {
        return unknown(
          `Lot ${lotCode} of this product was never received here. Receive it first, or pick the lot from the list.`,
          { productId: product.productIds[0] ?? null, lotCode },
        );
      }
      // The same code with another use-by is another lot: the date in the symbol tells which.
      const dated = lots.filter((lot) => lot.useBy === reading.useBy?.date);
      return named({
        productIds: product.productIds,
        lotIds: distinct((dated.length > 0 ? dated : lots).map((lot) => lot.lotId)),
        contentCount: reading.gtin14 === undefined ? null : product.contentCount,
      });
    }
    case 'plain text': {
      const codes = asTyped(reading.text);
      const lots = found.lotCodes.filter(({ code }) => codes.includes(code));
      if (lots.length === 0) {
        return unknown(
          `"${reading.text.slice(0, 60)}" is neither a label nor a lot code known here. Check the label, or pick the product and lot from the list.`,
        );
      }
      return named({
        productIds: distinct(lots.map((lot) => lot.productId)),
        lotIds: distinct(lots.map((lot) => lot.lotId)),
        contentCount: null,
      });
    }
  }
}

function asKnownHere(reading: SymbolReading, { labels }: FoundGoods): SymbolReading {
  if (reading.kind !== 'own label' || labels.some(({ code }) => code === reading.code)) return reading;
  const { code: _, kind: __, elements, text, symbologyIdentifier, ...facts } = reading;
  const whatWasRead = symbologyIdentifier === undefined ? { text } : { text, symbologyIdentifier };
  if (elements.length === 0) return { ...whatWasRead, kind: 'plain text', doubts: [] };
  return gtinOf(facts) === undefined ? reading : { ...whatWasRead, ...facts, kind: 'gs1', elements };
}

function gtinOf(facts: { gtin14?: string; contentGtin14?: string }): string | undefined {
  return facts.gtin14 ?? facts.contentGtin14;
}

function productOf(gtin: string, { gtins }: FoundGoods) {
  const product = gtins.find((one) => one.gtin === gtin);
  return product && { productIds: [product.productId], contentCount: product.contentCount };
}

/** A lot code is kept as it is printed; who types it may leave the capitals out. */
function asTyped(text: string): string[] {
  return distinct([text, text.toUpperCase()]);
}

function unknownGtin(gtin: string): SymbolNaming {
  return unknown(`No product here has the GTIN ${gtin}. Add the GTIN to its product first.`, { gtin });
}

function unknown(detail: string, facts: Record<string, string | null> = {}): SymbolNaming {
  return { kind: 'unknown', detail, facts };
}

function distinct(values: readonly string[]): string[] {
  return [...new Set(values)];
}
