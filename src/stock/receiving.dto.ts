import { IsIn, IsInt, IsOptional, IsString, Max, MaxLength, Min } from 'class-validator';
import { SymbolDto } from '../catalogue/symbol.dto.js';
import { IsInstant } from '../platform/instant.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { Nested, NestedList } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto } from '../platform/request.dto.js';
import { type SameCodeDecision, sameCodeDecisions } from './lot-match.js';
import { mostPiecesInLine, type PieceFault, pieceFaults } from './planned-containers.js';
import { type CodeState, codeStates, type LotCodeKind, lotCodeKinds } from './vocabulary.js';

const maximumLines = 200;
const maximumCodes = 10;
const maximumDateLength = 20;
const mostMicrolitresLeft = 1_000_000;
const mostUnitCostMinor = 100_000_000;
export const deliveryOrigins = ['purchase', 'gift or sample', 'opening stock'] as const;

export class PrintedCodeDto {
  @IsIn(lotCodeKinds) kind: LotCodeKind;
  /** As printed, spaces and hyphens inside it too. */
  @PlainText(60) code: string;
}

export class FaultyPiecesDto {
  @IsIn(pieceFaults) kind: PieceFault;
  /** How many pieces; a piece with two faults is named under one. */
  @IsInt() @Min(1) @Max(mostPiecesInLine) pieces: number;
}

export class DeliveryLineDto {
  /** Which product; may be left out when a symbol names it. */
  @MayBeLeftOut() @NamedId() productId?: string;
  @MayBeLeftOut() @Nested(() => SymbolDto) symbol?: SymbolDto;
  /** Every code printed for the lot; may be left out when the symbol holds it. */
  @MayBeLeftOut()
  @NestedList(() => PrintedCodeDto, maximumCodes)
  codes?: PrintedCodeDto[];
  /** Why there are no codes. */
  @MayBeLeftOut() @IsIn(codeStates) codeState?: CodeState;
  /** YYYY-MM-DD, YYYY-MM or YYYY as printed; null: none is printed; may be left out when the symbol holds it. */
  @IsOptional() @IsString() @MaxLength(maximumDateLength) useBy?: string | null;
  /** YYYY-MM-DD. */
  @IsOptional() @IsString() @MaxLength(maximumDateLength) manufacturedOn?: string | null;
  /** How many, of what the symbol stands for: a scanned pack counts with its content. Else pieces. */
  @IsInt() @Min(1) @Max(mostPiecesInLine) quantity: number;
  /** Pieces in each of what is counted, where no symbol is given that tells it; each is put away by itself. Left out: 1. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPiecesInLine) piecesEach?: number;
  /** Cost of one piece in minor units of the studio's currency; null: unknown. */
  @IsOptional() @IsInt() @Min(0) @Max(mostUnitCostMinor) unitCostMinor?: number | null;
  /**
   * The line of an order that this answers; null: none. Left out: where the expected delivery is that of a purchase order,
   * its line of the same product that still waits.
   */
  @IsOptional() @PlainText(100) orderLineId?: string | null;
  @NamedId() placeId: string;
  /** The artist whose it is; null: the studio's. */
  @IsOptional() @NamedId() ownerId?: string | null;
  @MayBeLeftOut()
  @NestedList(() => FaultyPiecesDto, pieceFaults.length)
  faults?: FaultyPiecesDto[];
  /** Bottles that come opened: when they were opened, an instant. */
  @IsOptional()
  @IsInstant()
  openedAt?: string | null;
  /** Pigments that come opened: what is estimated to be left in each bottle. Left out: what the label says. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(mostMicrolitresLeft) remainingMicrolitres?: number;
  /** The answer to a code that is known with another use-by date. */
  @MayBeLeftOut() @IsIn(sameCodeDecisions) sameCodeDecision?: SameCodeDecision;
}

export class ReceiveDeliveryDto extends EventDto {
  @IsIn(deliveryOrigins) origin: (typeof deliveryOrigins)[number];
  /** Whoever sold it; purchases only. */
  @IsOptional() @NamedId() supplierId?: string | null;
  /** YYYY-MM-DD; purchases only. */
  @IsOptional() @IsString() @MaxLength(maximumDateLength) orderedOn?: string | null;
  /** Number on the delivery note or invoice. */
  @IsOptional() @PlainText(100) reference?: string | null;
  /**
   * The expected delivery that this is; it is expected no longer. What is missing of a purchase order behind it is expected
   * anew, also when this answers no line of it.
   */
  @IsOptional() @NamedId() expectedDeliveryId?: string | null;
  @NestedList(() => DeliveryLineDto, maximumLines, 1)
  lines: DeliveryLineDto[];
}
