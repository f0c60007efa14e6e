import { ArrayMaxSize, ArrayMinSize, ArrayUnique, IsArray } from 'class-validator';
import { NamedId } from '../../platform/named-id.js';
import { WriteDto } from '../../platform/request.dto.js';

/** How many clients one request erases at most. */
export const mostErasedAtOnce = 100;

export class CarryOutRetentionDto extends WriteDto {
  /** Who is to be erased, one by one: nobody is because time has passed. */
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(mostErasedAtOnce)
  @ArrayUnique()
  @NamedId({ each: true })
  clientIds: string[];
}
