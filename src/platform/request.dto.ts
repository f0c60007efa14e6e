import { Transform } from 'class-transformer';
import { IsInt, IsOptional, Max, Min } from 'class-validator';
import { IsInstant } from './instant.js';
import { MayBeLeftOut } from './may-be-left-out.js';
import { NamedId } from './named-id.js';

/** What every write carries. */
export class WriteDto {
  /** Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer. */
  @NamedId() id: string;
}

/** What a write of something that happened carries. */
export class EventDto extends WriteDto {
  /** When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now. */
  @MayBeLeftOut() @IsInstant() occurredAt?: string;
}

export const maximumPageSize = 200;

/** One page of a list. */
export class PageDto {
  /** How many at most, 1 to 200. */
  @IsOptional()
  @Transform(({ value }) => (typeof value === 'string' && /^\d+$/.test(value) ? Number(value) : value))
  @IsInt()
  @Min(1)
  @Max(maximumPageSize)
  limit?: number;

  /** The `next` of the page before. */
  @MayBeLeftOut() @NamedId() after?: string;
}
