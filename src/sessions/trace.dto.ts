import { Transform } from 'class-transformer';
import { ArrayMaxSize, ArrayMinSize, ArrayUnique, IsArray, IsInt, IsUUID, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { maximumPageSize } from '../platform/request.dto.js';

const maximumLots = 200;
const lowerCase = ({ value }: { value: unknown }) =>
  typeof value === 'string' ? value.toLowerCase() : value;
const lowerCaseEach = ({ value }: { value: unknown }) =>
  Array.isArray(value)
    ? value.map((one: unknown) => (typeof one === 'string' ? one.toLowerCase() : one))
    : value;

/** Sent in the body, for many lots do not fit into an address. */
export class TraceLotsDto {
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(maximumLots)
  @ArrayUnique()
  @Transform(lowerCaseEach)
  @IsUUID(undefined, { each: true })
  lotIds: string[];

  /** How many uses at most, 1 to 200. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(maximumPageSize) limit?: number;

  /** The `next` of the page before. */
  @MayBeLeftOut() @Transform(lowerCase) @IsUUID() after?: string;
}
