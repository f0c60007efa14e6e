import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const maximumNameLength = 100;

export class AddCompanyDto extends WriteDto {
  /** As it stands on labels or invoices. */
  @PlainText(maximumNameLength) name: string;
}

export class RenameCompanyDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @PlainText(maximumNameLength) name: string;
}
