import { Temporal } from 'temporal-polyfill';
import { pieceFaults } from '../../stock/planned-containers.js';
import { readUseBy } from '../../stock/use-by.js';
import type { BodyOf } from '../service/operations.js';
import { type LineDraft, piecesInOne } from './line-draft.js';

export type DeliveryBody = BodyOf<'POST', '/studios/{studioId}/deliveries'>;
type DeliveryLine = DeliveryBody['lines'][number];

/** What has to be said or answered before a line can be handed in. */
export type LineLack =
  | 'product'
  | 'lot'
  | 'useBy'
  | 'useByUnreadable'
  | 'quantity'
  | 'faulty'
  | 'price'
  | 'left'
  | 'again'
  | 'decision'
  | 'place';

/** @param usualPlaceId where the delivery goes; empty: not chosen */
export function lacksOfLine(line: LineDraft, usualPlaceId: string, currency: string): LineLack[] {
  const lacks: LineLack[] = [];
  const { scanned } = line;
  if (line.product === null) lacks.push('product');
  if (line.codeState === 'printed' && (scanned?.lotCode ?? null) === null && line.lotCode.trim() === '') {
    lacks.push('lot');
  }
  if ((scanned?.useBy ?? null) === null && !line.noUseBy) {
    if (line.useBy.trim() === '') lacks.push('useBy');
    else if ('error' in readUseBy(line.useBy)) lacks.push('useByUnreadable');
  }
  if (!isCount(line.quantity) || (!isCount(line.piecesEach) && scanned === null)) lacks.push('quantity');
  const faulty = pieceFaults.map((kind) => line.faulty[kind]).filter((pieces) => pieces.trim() !== '');
  const sum = faulty.reduce((total, pieces) => total + Number(pieces), 0);
  const mostFaulty = Number(line.quantity) * piecesInOne(line);
  if (faulty.some((pieces) => !/^\d+$/.test(pieces.trim())) || sum > mostFaulty) lacks.push('faulty');
  if (minorUnitsOf(line.price, currency) === undefined) lacks.push('price');
  if (microlitresOf(line.millilitresLeft) === undefined) lacks.push('left');
  if (line.again > 0) lacks.push('again');
  if (line.question !== null && line.decision === '') lacks.push('decision');
  if ((line.placeId || usualPlaceId) === '') lacks.push('place');
  return lacks;
}

/** A line as the service takes it; only of one that lacks nothing. */
export function handedInLine(
  line: LineDraft,
  { usualPlaceId, currency, timeZone }: { usualPlaceId: string; currency: string; timeZone: string },
): DeliveryLine {
  const { scanned, product, contentCount } = line;
  const hasSymbol = scanned !== null && scanned.gtin !== null;
  const isRegistered = hasSymbol && contentCount !== null;
  const codes = codesOf(line);
  const faults = pieceFaults
    .map((kind) => ({ kind, pieces: Number(line.faulty[kind]) }))
    .filter(({ pieces }) => pieces > 0);
  const unitCostMinor = minorUnitsOf(line.price, currency);
  const useBy = saidUseBy(line);
  return {
    ...(hasSymbol && { symbol: symbolOf(scanned) }),
    ...(!isRegistered && product && { productId: product.id }),
    ...(codes.length > 0 && { codes }),
    ...(line.codeState !== 'printed' && { codeState: line.codeState }),
    ...(useBy !== undefined && { useBy }),
    ...(line.manufacturedOn !== '' && { manufacturedOn: line.manufacturedOn }),
    quantity: Number(line.quantity),
    ...(!hasSymbol && Number(line.piecesEach) > 1 && { piecesEach: Number(line.piecesEach) }),
    placeId: line.placeId || usualPlaceId,
    ...(line.ownerId !== '' && { ownerId: line.ownerId }),
    ...(faults.length > 0 && { faults }),
    ...openedFacts(line, timeZone),
    ...(unitCostMinor != null && { unitCostMinor }),
    ...(line.decision !== '' && { sameCodeDecision: line.decision }),
  };
}

/** From the first moment of the day that is named, in the studio. */
function openedFacts({ product, openedOn, millilitresLeft }: LineDraft, timeZone: string) {
  if (product?.stockForm !== 'container' || openedOn === '') return {};
  const openedAt = Temporal.PlainDate.from(openedOn).toZonedDateTime(timeZone).toInstant().toString();
  const left = product.kind === 'pigment' ? microlitresOf(millilitresLeft) : null;
  return { openedAt, ...(left != null && { remainingMicrolitres: left }) };
}

/** A symbol that names no product is not handed on; what it says is. */
function codesOf({ scanned, codeState, lotCode, batchCode }: LineDraft): NonNullable<DeliveryLine['codes']> {
  if (codeState !== 'printed') return [];
  const lot = scanned?.lotCode ?? lotCode.trim();
  const isInSymbol = scanned !== null && scanned.gtin !== null && scanned.lotCode !== null;
  return [
    ...(lot === '' || isInSymbol ? [] : [{ kind: 'lot' as const, code: lot }]),
    ...(batchCode.trim() === '' ? [] : [{ kind: 'batch' as const, code: batchCode.trim() }]),
  ];
}

/** Undefined where the symbol that is handed on says it. */
function saidUseBy({ scanned, useBy, noUseBy }: LineDraft): string | null | undefined {
  if (scanned !== null && scanned.useBy !== null) {
    if (scanned.gtin !== null) return undefined;
    return scanned.useByPrecision === 'month' ? scanned.useBy.slice(0, 7) : scanned.useBy;
  }
  return noUseBy ? null : useBy.trim();
}

function symbolOf({ text, symbologyIdentifier }: { text: string; symbologyIdentifier: string | null }) {
  return { text, ...(symbologyIdentifier !== null && { symbologyIdentifier }) };
}

function isCount(text: string): boolean {
  return /^[1-9]\d*$/.test(text.trim());
}

/** @returns null for nothing, undefined for what is no number */
function microlitresOf(millilitres: string): number | null | undefined {
  const shown = millilitres.trim().replace(',', '.');
  if (shown === '') return null;
  return /^\d{1,4}(\.\d{1,3})?$/.test(shown) ? Math.round(Number(shown) * 1000) : undefined;
}

/** @returns null for nothing, undefined for what is no amount of the currency */
function minorUnitsOf(price: string, currency: string): number | null | undefined {
  const shown = price.trim().replace(',', '.');
  if (shown === '') return null;
  const decimals = decimalsOf(currency);
  if (!/^\d{1,7}(\.\d+)?$/.test(shown) || (shown.split('.')[1]?.length ?? 0) > decimals) return undefined;
  return Math.round(Number(shown) * 10 ** decimals);
}

/** As many as the currency has: 2 for EUR, 0 for JPY (ISO 4217, as Intl knows it). */
function decimalsOf(currency: string): number {
  const format = new Intl.NumberFormat('en', { style: 'currency', currency });
  return format.resolvedOptions().maximumFractionDigits ?? 2;
}
