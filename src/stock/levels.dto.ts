import { IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const subjectKinds = ['product', 'configuration'] as const;
const maximumMinimumPieces = 100_000;

export class RemoveLevelDto extends WriteDto {
  /** The version that is removed. */
  @Version() version: number;
}

export class SetLevelDto extends WriteDto {
  @IsIn(subjectKinds) subjectKind: (typeof subjectKinds)[number];
  /** A product id, or a key of a cartridge configuration. */
  @PlainText(300) subjectId: string;
  /** Low at or below this. */
  @IsInt() @Min(0) @Max(maximumMinimumPieces) minimumPieces: number;
  /** The version this change was made from; left out when no level is set yet. */
  @MayBeLeftOut() @Version() version?: number;
}
