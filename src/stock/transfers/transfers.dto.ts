import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsBoolean,
  IsIn,
  IsInt,
  IsOptional,
  Max,
  Min,
} from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { NestedList } from '../../platform/nested.js';
import { PlainText } from '../../platform/plain-text.js';
import { EventDto, PageDto } from '../../platform/request.dto.js';
import { maximumPieces } from '../container-operations.dto.js';
import { pieceFaults } from '../planned-containers.js';
import { FaultyPiecesDto } from '../receiving.dto.js';

const maximumLines = 200;
const maximumReasonLength = 300;

export class SentLineDto {
  @NamedId() containerId: string;
  /** Of a box: so many pieces; left out: the whole. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(maximumPieces) pieces?: number;
}

export class SendTransferDto extends EventDto {
  /** Another studio of the same chain. */
  @NamedId() receiverId: string;
  /** Why it is sent; both studios read it. Never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
  @NestedList(() => SentLineDto, maximumLines, 1)
  lines: SentLineDto[];
}

export class ArrivedLineDto {
  /** The line of the transfer. */
  @NamedId() lineId: string;
  /** Pieces that are here, damaged ones too; a bottle is one. What is missing of those sent is recorded as lost. */
  @IsInt() @Min(0) @Max(maximumPieces) pieces: number;
  /** Of these pieces, those to be put aside. */
  @MayBeLeftOut()
  @NestedList(() => FaultyPiecesDto, pieceFaults.length)
  faults?: FaultyPiecesDto[];
  /** Where it stands from now on; may be left out only when nothing is here. */
  @MayBeLeftOut() @NamedId() placeId?: string;
  /** The artist whose it becomes; null or left out: the studio's. */
  @IsOptional() @NamedId() ownerId?: string | null;
  /** True: these pieces were recorded as lost and have turned up. */
  @MayBeLeftOut() @IsBoolean() turnedUp?: boolean;
}

export class RecordArrivalDto extends EventDto {
  /** What is to be said of it, such as how it was damaged; both studios read it. Never of a client: it is kept in the clear. */
  @MayBeLeftOut() @PlainText(maximumReasonLength) reason?: string;
  /** Lines that are not named stay in transit. */
  @NestedList(() => ArrivedLineDto, maximumLines, 1)
  lines: ArrivedLineDto[];
}

export class WithdrawTransferDto extends EventDto {
  /** Why it is called back; both studios read it. Never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
  /** The lines that are back on the shelf; left out: the whole transfer. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(maximumLines)
  @NamedId({ each: true })
  lineIds?: string[];
  /** Where what went whole stands from now on; left out: where it stood. */
  @MayBeLeftOut() @NamedId() placeId?: string;
}

export const transferDirections = ['out', 'in'] as const;
export type TransferDirection = (typeof transferDirections)[number];

export class TransferPageDto extends PageDto {
  /** Out: sent from here; in: sent to here; left out: both. */
  @MayBeLeftOut() @IsIn(transferDirections) direction?: TransferDirection;
}
