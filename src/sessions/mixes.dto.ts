import { IsInt, Max, Min, ValidateIf } from 'class-validator';
import { InsteadOfDrops } from '../catalogue/liquid-amount.dto.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto } from '../platform/request.dto.js';
import { mostDrops, mostMicrolitres } from './amount.dto.js';

const maximumLabelLength = 40;
// Named, for the OpenAPI plugin leaves out a property whose limit is an expression.
const mostDropsTakenBack = -mostDrops;
const mostMicrolitresTakenBack = -mostMicrolitres;

export class StartMixDto extends EventDto {
  /** Such as `base` or `shadow`; never about the client. */
  @PlainText(maximumLabelLength) label: string;
}

/** Drops or a volume of one bottle; negative to take a slip back. */
export class AddToMixDto extends EventDto {
  @NamedId() containerId: string;

  @ValidateIf((dto: AddToMixDto) => dto.microlitres === undefined)
  @IsInt({ message: 'drops must be a whole number; or give microlitres instead' })
  @Min(mostDropsTakenBack)
  @Max(mostDrops)
  drops?: number;

  @MayBeLeftOut()
  @IsInt()
  @Min(mostMicrolitresTakenBack)
  @Max(mostMicrolitres)
  @InsteadOfDrops()
  microlitres?: number;
}
