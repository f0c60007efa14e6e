import { ArrayMaxSize, ArrayMinSize, IsIn, IsInt, Max, Min } from 'class-validator';
import { PlainText } from '../../platform/plain-text.js';
import { WriteDto } from '../../platform/request.dto.js';
import { type Permission, permissions } from '../permissions.js';

export class MakeApiTokenDto extends WriteDto {
  /** What the token is for. */
  @PlainText(100) name: string;
  /** What the token may be used for: permissions the person has. */
  @ArrayMinSize(1)
  @ArrayMaxSize(permissions.length)
  @IsIn(permissions, { each: true })
  scopes: Permission[];
  /** Whole days until it expires. */
  @IsInt() @Min(1) @Max(366) days: number;
}
