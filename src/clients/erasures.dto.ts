import { ArrayMaxSize, ArrayUnique, IsArray, IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { WriteDto } from '../platform/request.dto.js';
import {
  type ErasureGround,
  type ErasureOverride,
  erasureGrounds,
  erasureOverrides,
} from './erasure-decision.js';

export class PreviewErasureDto {
  /** For what reason it would be asked; left out: consent withdrawn. */
  @MayBeLeftOut() @IsIn(erasureGrounds) ground?: ErasureGround;
}

export class AskErasureDto extends WriteDto {
  /** Why: a ground of GDPR Art. 17(1), or "retention over" on the studio's own motion. */
  @IsIn(erasureGrounds) ground: ErasureGround;
  /** What is to be said against what stands against it, where the law leaves that to the studio. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMaxSize(erasureOverrides.length)
  @ArrayUnique()
  @IsIn(erasureOverrides, { each: true })
  overrides?: ErasureOverride[];
}
