import { ArrayMaxSize, ArrayMinSize, ArrayUnique, IsArray, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { maximumPageSize } from '../platform/request.dto.js';

const maximumLots = 200;

/** Sent in the body, for many lots do not fit into an address. */
export class TraceLotsDto {
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(maximumLots)
  @ArrayUnique()
  @NamedId({ each: true })
  lotIds: string[];

  /** How many uses at most, 1 to 200. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(maximumPageSize) limit?: number;

  /** The `next` of the page before. */
  @MayBeLeftOut() @NamedId() after?: string;
}
