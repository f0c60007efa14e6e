import { Transform } from 'class-transformer';
import { IsInt, IsISO8601, IsOptional, IsUUID, Max, Min } from 'class-validator';

const lowerCase = ({ value }: { value: unknown }) =>
  typeof value === 'string' ? value.toLowerCase() : value;

/** What every write carries. */
export class WriteDto {
  /** Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer. */
  @Transform(lowerCase)
  @IsUUID(undefined, { message: 'id must be a UUID made by the client' })
  id: string;
}

/** What a write of something that happened carries. */
export class EventDto extends WriteDto {
  /** When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now. */
  @IsOptional()
  @IsISO8601({ strict: true }, { message: 'occurredAt must be an instant such as 2026-03-01T09:30:00Z' })
  occurredAt?: string;
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
  @IsOptional()
  @IsUUID(undefined, { message: 'after must be the next of the page before' })
  after?: string;
}
