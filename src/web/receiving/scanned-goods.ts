import type { SymbolView } from '../../catalogue/symbols.views.js';

/** What a symbol on goods says, as far as it is needed to take them in. */
export interface ScannedGoods {
  /** As it came, to be handed on. */
  text: string;
  symbologyIdentifier: string | null;
  /** 14 digits: its own number, or that of its content; null when it names no product. */
  gtin: string | null;
  /** How many of that number it stands for. */
  count: number;
  lotCode: string | null;
  /** YYYY-MM-DD. */
  useBy: string | null;
  useByPrecision: 'day' | 'month' | null;
  producedOn: string | null;
  serial: string | null;
}

/**
 * A box may name what is inside it and how many (AI 02 and 37) in place of a number of its own (GS1 General Specifications
 * [M]).
 */
export function goodsInSymbol(symbol: SymbolView): ScannedGoods {
  const element = (identifier: string) =>
    symbol.elements.find(({ applicationIdentifier }) => applicationIdentifier === identifier)?.value;
  const content = element('02');
  const count = Number(element('37'));
  const isBox = symbol.gtin === null && content !== undefined && count > 0;
  return {
    text: symbol.text,
    symbologyIdentifier: symbol.symbologyIdentifier,
    gtin: isBox ? content : symbol.gtin,
    count: isBox ? count : 1,
    lotCode: symbol.lotCode,
    useBy: symbol.useBy,
    useByPrecision: symbol.useByPrecision,
    producedOn: symbol.producedOn,
    serial: symbol.serial,
  };
}
