import { Transform } from 'class-transformer';
import { IsUUID } from 'class-validator';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';

const lowerCase = ({ value }: { value: unknown }) =>
  typeof value === 'string' ? value.toLowerCase() : value;

export class DeclareEquivalenceDto extends WriteDto {
  @Transform(lowerCase) @IsUUID() productId: string;
  @Transform(lowerCase) @IsUUID() otherProductId: string;
  /** Why the two stand for each other. */
  @PlainText(500) reason: string;
}

export class WithdrawEquivalenceDto extends WriteDto {}
