import { IsIn, IsInt, IsOptional, IsString, Max, MaxLength, Min } from 'class-validator';
import { NewClientDto } from '../clients/clients.dto.js';
import { IsInstant } from '../platform/instant.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { Nested, NestedList } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto, WriteDto } from '../platform/request.dto.js';
import { AmountDto, longestReason, mostPieces } from './amount.dto.js';
import { longestComplications } from './completion.dto.js';
import { maximumDetailLength } from './sessions.dto.js';
import {
  type BodyPlace,
  bodyPlaces,
  type KnownBy,
  knownBy,
  type VisitKind,
  visitKinds,
} from './vocabulary.js';

const maximumUses = 300;
const maximumCodeLength = 60;
const maximumDateLength = 20;
const lateSources = ['late', 'paper'] as const;
const missingCodes = ['none printed', 'unreadable'] as const;

/** What touched the client: exactly one of containerId, lotId and productId is given. */
export class LateUseDto extends AmountDto {
  @MayBeLeftOut() @NamedId() containerId?: string;
  @MayBeLeftOut() @NamedId() lotId?: string;
  /** With what was written down of its label; a lot that is not on record is made. */
  @MayBeLeftOut() @NamedId() productId?: string;
  /** With productId: the lot code as written. */
  @MayBeLeftOut() @PlainText(maximumCodeLength) code?: string;
  /** With productId: why there is no code. */
  @MayBeLeftOut() @IsIn(missingCodes) codeState?: (typeof missingCodes)[number];
  /** With productId: YYYY-MM-DD, YYYY-MM or YYYY as written; left out: not written. */
  @IsOptional() @IsString() @MaxLength(maximumDateLength) useBy?: string | null;
  /** The mix of this session that it went into; left out: used by itself. */
  @MayBeLeftOut() @NamedId() mixId?: string;
  /** How the lot was known. */
  @IsIn(knownBy) knownBy: KnownBy;
  /** For what is counted in pieces; left out: 1. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPieces) pieces?: number;
}

/** A session that took place and is recorded afterwards. */
export class RecordLateSessionDto extends WriteDto {
  /** From memory or a device that was away (late), or from a paper form. */
  @IsIn(lateSources) source: (typeof lateSources)[number];
  /** When it took place. */
  @IsInstant() occurredAt: string;
  /** When the client booked; left out: not known. */
  @IsOptional() @IsInstant() bookedAt?: string | null;
  /** Exactly one of clientId and client is given. */
  @MayBeLeftOut() @NamedId() clientId?: string;
  /** A client who is not known yet. */
  @MayBeLeftOut() @Nested(() => NewClientDto) client?: NewClientDto;
  @NamedId() artistId: string;
  @NamedId() procedureId: string;
  @IsIn(visitKinds) visitKind: VisitKind;
  /** Left out: the procedure's. */
  @MayBeLeftOut() @IsIn(bodyPlaces) bodyPlace?: BodyPlace;
  /** Where exactly; kept sealed. */
  @IsOptional() @PlainText(maximumDetailLength) bodyPlaceDetail?: string | null;
  @IsOptional() @NamedId() followsSessionId?: string | null;

  @NestedList(() => LateUseDto, maximumUses)
  uses: LateUseDto[];

  /** In words; null: there were none; left out: not known. Kept sealed. */
  @IsOptional() @PlainText(longestComplications) complications?: string | null;
  /** The artist who signs off. */
  @NamedId() signedBy: string;
}

/** Uses that a completed session lacks. */
export class AddUsesDto extends WriteDto {
  @NestedList(() => LateUseDto, maximumUses, 1)
  uses: LateUseDto[];
}

/** A use that was recorded by mistake. */
export class ReverseUseDto extends EventDto {
  /** Why; kept sealed. To be left out for a client who was erased, for nothing can be sealed about them any more. */
  @MayBeLeftOut() @PlainText(longestReason) reason?: string;
}
