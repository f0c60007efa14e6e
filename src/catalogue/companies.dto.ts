import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';

const maximumNameLength = 100;

export class AddCompanyDto extends WriteDto {
  /** As it stands on labels or invoices. */
  @PlainText(maximumNameLength) name: string;
}

export class RenameCompanyDto extends WriteDto {
  @PlainText(maximumNameLength) name: string;
}
