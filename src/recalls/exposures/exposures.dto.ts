import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PageDto } from '../../platform/request.dto.js';
import { type Certainty, certainties } from './exposure-certainty.js';

export class ExposedClientsDto extends PageDto {
  /** Only clients who are this surely exposed; left out: all. */
  @MayBeLeftOut() @IsIn(certainties) certainty?: Certainty;
}

export class ExposuresDto extends PageDto {
  /** Only sessions of this client; left out: all. */
  @MayBeLeftOut() @NamedId() clientId?: string;
}
