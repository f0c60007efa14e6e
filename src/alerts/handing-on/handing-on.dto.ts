import { ArrayMaxSize, ArrayUnique, IsArray, IsInt, Max, Min, ValidateIf } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';

const fewestMinutes = 5;
const mostMinutes = 1_440;
const mostPeople = 50;

export class SetHandingOnDto extends WriteDto {
  /** Minutes without anybody acknowledging it, 5 to 1440; null: it is not handed on. */
  @ValidateIf((_, value) => value !== null)
  @IsInt()
  @Min(fewestMinutes)
  @Max(mostMinutes)
  afterMinutes: number | null;
  /** Who is told, in this order; empty: managers, then owners, as they came. */
  @IsArray()
  @ArrayMaxSize(mostPeople)
  @ArrayUnique({ message: 'personIds names a person twice; each is told once' })
  @NamedId({ each: true })
  personIds: string[];
  /** The version this change was made from; left out when nothing was chosen yet. */
  @MayBeLeftOut() @Version() version?: number;
}
