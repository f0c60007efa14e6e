import { IsIn, IsInt, IsOptional, Max, Min } from 'class-validator';
import { IsInstant } from '../platform/instant.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto, WriteDto } from '../platform/request.dto.js';

const maximumReasonLength = 300;
export const maximumPieces = 100_000;

export class OpenContainerDto extends EventDto {}

export class CorrectOpenedDateDto extends WriteDto {
  /** When it was really opened. */
  @IsInstant()
  openedAt: string;
  /** Why. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
}

export class UndoOpeningDto extends WriteDto {
  /** Why. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
}

export class FinishContainerDto extends EventDto {}

export class DiscardContainerDto extends EventDto {
  /** Why. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
}

export class WastePiecesDto extends EventDto {
  @IsInt() @Min(1) @Max(maximumPieces) pieces: number;
  /** Why. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
}

export class CountContainerDto extends EventDto {
  /** For a box: the pieces counted in it. */
  @MayBeLeftOut()
  @IsInt()
  @Min(0)
  @Max(maximumPieces)
  pieces?: number;
  /** For a bottle: whether it was found. */
  @MayBeLeftOut() @IsIn(['still there', 'missing']) bottle?: 'still there' | 'missing';
}

export class ReturnContainerDto extends EventDto {
  /** Why it goes back to the supplier. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
  /** Of a box: so many pieces; left out: all. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(maximumPieces) pieces?: number;
}

export class MoveContainerDto extends EventDto {
  /** Left out: it stays where it is. */
  @MayBeLeftOut() @NamedId() placeId?: string;
  /** The artist whose it becomes; null: the studio's; left out: as before. */
  @IsOptional() @NamedId() ownerId?: string | null;
  /** Of a box: so many pieces go into a box of their own; left out: the whole. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(maximumPieces) pieces?: number;
}

export class KeepForPracticeDto extends EventDto {
  /** Where it stands from now on; left out: it stays where it is. */
  @MayBeLeftOut() @NamedId() placeId?: string;
}

export class ReverseMovementDto extends EventDto {
  /** Why. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(maximumReasonLength) reason: string;
}
