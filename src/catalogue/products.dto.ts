import {
  ArrayMaxSize,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  IsString,
  Matches,
  Max,
  MaxLength,
  Min,
} from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { PageDto, WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';
import {
  leastDiameterHundredthsMillimetre,
  mostDiameterHundredthsMillimetre,
  mostPoints,
  type NeedleGrouping,
  type NeedleTaper,
} from './cartridge-notation.js';
import { leastDropMicrolitres, mostDropMicrolitres } from './drop-size.js';
import {
  type Membrane,
  membranes,
  needleGroupings,
  needleTapers,
  type PigmentRole,
  type ProductKind,
  pigmentRoles,
  productKinds,
} from './vocabulary.js';

const maximumNameLength = 120;
const maximumNotationLength = 40;
const maximumColourIndexNumbers = 20;
const leastVolumeMicrolitres = 100;
const mostVolumeMicrolitres = 1_000_000;
export const mostPiecesInPack = 10_000;

export class ProductsQueryDto extends PageDto {
  @MayBeLeftOut() @IsIn(productKinds) kind?: ProductKind;
  /** Words that stand in the name, the shade or the maker's name. */
  @MayBeLeftOut() @PlainText(100) text?: string;
  /** Archived products are hidden unless asked for. */
  @MayBeLeftOut() @IsIn(['hidden', 'shown']) archived?: 'hidden' | 'shown';
}

/** What the kinds have of their own; null or left out: not known. */
class ProductFieldsDto extends WriteDto {
  /** Opened life on the label, ISO 8601: P12M, P30D or PT48H. Pigments and consumables; null: the label gives none. */
  @IsOptional() @IsString() @MaxLength(40) openedLife?: string | null;
  /** Pigments: the shade's name or number. */
  @IsOptional() @PlainText(maximumNameLength) shade?: string | null;
  /** Pigments: a colour, or a thinner dropped into the same cup. */
  @IsOptional() @IsIn(pigmentRoles) pigmentRole?: PigmentRole | null;
  /** Pigments: labelled volume of one bottle. */
  @IsOptional()
  @IsInt()
  @Min(leastVolumeMicrolitres)
  @Max(mostVolumeMicrolitres)
  volumeMicrolitres?: number | null;
  /** Pigments: size of a drop, where it is known. */
  @IsOptional()
  @IsInt()
  @Min(leastDropMicrolitres)
  @Max(mostDropMicrolitres)
  dropMicrolitres?: number | null;
  /** Pigments: Colour Index numbers of the ingredients, such as 77491 or 15850:1. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMaxSize(maximumColourIndexNumbers)
  @Matches(/^\d{5}(:\d{1,2})?$/, {
    each: true,
    message: 'each of colourIndexNumbers must be five digits, such as 77491 or 15850:1',
  })
  colourIndexNumbers?: string[];
  /** Cartridges: trade notation, such as 1207RL, 0.18/3RL or 3RL. */
  @IsOptional() @PlainText(maximumNotationLength) notation?: string | null;
  /** Cartridges: number of needles. */
  @IsOptional() @IsInt() @Min(1) @Max(mostPoints) points?: number | null;
  @IsOptional() @IsIn(needleGroupings) grouping?: NeedleGrouping | null;
  /** Cartridges: needle diameter; 0.30 mm is 30. */
  @IsOptional()
  @IsInt()
  @Min(leastDiameterHundredthsMillimetre)
  @Max(mostDiameterHundredthsMillimetre)
  diameterHundredthsMillimetre?: number | null;
  @IsOptional() @IsIn(needleTapers) taper?: NeedleTaper | null;
  /** Cartridges: which machines the module fits, in the maker's words. */
  @IsOptional() @PlainText(maximumNameLength) machineFit?: string | null;
  /** Cartridges: back-flow barrier. */
  @IsOptional() @IsIn(membranes) membrane?: Membrane | null;
}

export class AddProductDto extends ProductFieldsDto {
  @IsIn(productKinds) kind: ProductKind;
  @NamedId() makerId: string;
  @PlainText(maximumNameLength) name: string;
}

export class ChangeProductDto extends ProductFieldsDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @NamedId() makerId?: string;
  @MayBeLeftOut() @PlainText(maximumNameLength) name?: string;
}

export class ArchiveProductDto extends WriteDto {
  @Version() version: number;
}

export class AddGtinDto extends WriteDto {
  /** 8, 12, 13 or 14 digits with their check digit. */
  @IsString() @MaxLength(20) gtin: string;
  /** Pieces inside: 1 for the single unit, more for an outer pack. Left out: 1. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPiecesInPack) contentCount?: number;
}

export class CorrectGtinDto extends WriteDto {
  /** The version of the number that this correction was made from. */
  @Version() version: number;
  /** The product it stands for; left out: it stays. */
  @MayBeLeftOut() @NamedId() productId?: string;
  /** Pieces inside; left out: it stays. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPiecesInPack) contentCount?: number;
}
