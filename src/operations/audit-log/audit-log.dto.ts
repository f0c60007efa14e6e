import { Transform } from 'class-transformer';
import { IsIn, IsInt, Max, Min } from 'class-validator';
import { IsInstant } from '../../platform/instant.js';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PlainText } from '../../platform/plain-text.js';
import { maximumPageSize } from '../../platform/request.dto.js';

const orders = ['newest', 'oldest'] as const;
const longestWord = 100;
const longestId = 300;
const mostEntries = 2_147_483_647;

const wholeNumber = ({ value }: { value: unknown }) =>
  typeof value === 'string' && /^\d+$/.test(value) ? Number(value) : value;

export class AuditPageDto {
  /** Which end comes first; left out: the newest. */
  @MayBeLeftOut() @IsIn(orders) order?: (typeof orders)[number];
  /** Only entries about such things: `container`, `session`, `person`. */
  @MayBeLeftOut() @PlainText(longestWord) subjectKind?: string;
  /** Only entries about the thing with this id. */
  @MayBeLeftOut() @PlainText(longestId) subjectId?: string;
  /** Only entries of this action, such as `stock.open`. */
  @MayBeLeftOut() @PlainText(longestWord) action?: string;
  /** Only what this person did. */
  @MayBeLeftOut() @NamedId() personId?: string;
  /** Only what was recorded at this instant or later. */
  @MayBeLeftOut() @IsInstant() from?: string;
  /** Only what was recorded before this instant. */
  @MayBeLeftOut() @IsInstant() to?: string;

  /** How many at most, 1 to 200. */
  @MayBeLeftOut()
  @Transform(wholeNumber)
  @IsInt()
  @Min(1)
  @Max(maximumPageSize)
  limit?: number;

  /** The `next` of the page before. */
  @MayBeLeftOut()
  @Transform(wholeNumber)
  @IsInt()
  @Min(1)
  @Max(mostEntries)
  after?: number;
}
