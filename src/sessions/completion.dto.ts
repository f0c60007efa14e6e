import { IsIn, IsInt, Max, Min, ValidateIf } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { NestedList } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto } from '../platform/request.dto.js';
import { AmountDto, mostPieces } from './amount.dto.js';
import { type Outcome, outcomes } from './completion-rules.js';

const mostLines = 300;
export const longestComplications = 4_000;

export class CompletedLineDto extends AmountDto {
  @NamedId() trayLineId: string;
  @IsIn(outcomes) outcome: Outcome;
}

/** Something that was used though it was not admitted to the tray: recorded all the same. */
export class UsedBesidesDto extends AmountDto {
  @NamedId() containerId: string;
  /** Pieces, for what is counted in pieces. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPieces) pieces?: number;
}

export class CompleteSessionDto extends EventDto {
  /** What became of lines; a piece not named was used, a container not named was used when it is in a mix. */
  @NestedList(() => CompletedLineDto, mostLines)
  lines: CompletedLineDto[];

  /** Used without having been admitted. */
  @MayBeLeftOut()
  @NestedList(() => UsedBesidesDto, mostLines)
  besides?: UsedBesidesDto[];

  /** Complications, in words; null: there were none, which has to be said. Kept sealed. */
  @ValidateIf((_, value) => value !== null) @PlainText(longestComplications) complications: string | null;

  /** The artist who signs off. */
  @NamedId() signedBy: string;
}
