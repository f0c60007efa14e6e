import { IsInt, IsOptional, IsString, Length, Max, Min, ValidateIf } from 'class-validator';
import { NamedId } from '../platform/named-id.js';
import { EventDto } from '../platform/request.dto.js';

const mostDrops = 500;
const mostMicrolitres = 50_000;

export class StartMixDto extends EventDto {
  /** Such as `base` or `shadow`; never about the client. */
  @IsString() @Length(1, 40) label: string;
}

/** Drops or a volume of one bottle; negative to take a slip back. */
export class AddToMixDto extends EventDto {
  @NamedId() containerId: string;

  @ValidateIf((dto: AddToMixDto) => dto.microlitres === undefined)
  @IsInt({ message: 'drops must be a whole number; or give microlitres instead' })
  @Min(-mostDrops)
  @Max(mostDrops)
  drops?: number;

  @IsOptional()
  @IsInt()
  @Min(-mostMicrolitres)
  @Max(mostMicrolitres)
  microlitres?: number;
}
