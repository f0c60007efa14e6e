import { IsInt, Max, Min } from 'class-validator';
import { InsteadOfDrops } from '../catalogue/liquid-amount.dto.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { NestedList } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto, PageDto } from '../platform/request.dto.js';

const maximumParents = 20;
const maximumMicrolitres = 1_000_000;
const maximumDrops = 10_000;

export class BlendParentDto {
  @NamedId() containerId: string;
  /** How much went in, or else in drops. */
  @MayBeLeftOut()
  @IsInt()
  @Min(1)
  @Max(maximumMicrolitres)
  @InsteadOfDrops()
  microlitres?: number;
  /** Turned into microlitres by the drop size of the product. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(maximumDrops) drops?: number;
}

export class MakeBlendDto extends EventDto {
  /** The pigment product that the blend is kept as. */
  @NamedId() productId: string;
  @NestedList(() => BlendParentDto, maximumParents, 2)
  parents: BlendParentDto[];
  @NamedId() placeId: string;
  /** The artist whose it is; left out: the studio's. */
  @MayBeLeftOut() @NamedId() ownerId?: string;
  /** Left out: one is made. */
  @MayBeLeftOut() @PlainText(40) code?: string;
  /** Last day of use, YYYY-MM-DD; left out: as long as the first of the parents lasts. */
  @MayBeLeftOut() @PlainText(20) useBy?: string;
}

export class BlendPageDto extends PageDto {}
