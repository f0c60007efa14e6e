import { IsInt, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { NestedList } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const maximumItems = 100;
const maximumQuantity = 100;
const maximumConfigurationLength = 300;

/** One line of a kit list: exactly one of product and configuration is named. */
export class KitItemDto {
  @IsOptional() @NamedId() productId?: string | null;
  /** Key of a configuration, as the catalogue lists them: any cartridge of it will do. */
  @IsOptional() @PlainText(maximumConfigurationLength) configuration?: string | null;
  @IsInt() @Min(1) @Max(maximumQuantity) quantity: number;
}

export class PutKitListDto extends WriteDto {
  /** Whose own list this is; left out or null: the procedure's, for all who have none of their own. */
  @IsOptional() @NamedId() artistId?: string | null;
  /** In the order in which they are laid out; empty: nothing is needed. */
  @NestedList(() => KitItemDto, maximumItems)
  items: KitItemDto[];

  /** The version this change was made from; left out: there is no such list yet. */
  @MayBeLeftOut() @Version() version?: number;
}

export class ShowKitListDto {
  /** The artist for whom it is asked. */
  @MayBeLeftOut() @NamedId() artistId?: string;
}
