import { IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PlainText } from '../../platform/plain-text.js';
import { EventDto, PageDto } from '../../platform/request.dto.js';
import { maximumPieces } from '../../stock/container-operations.dto.js';
import { type DispositionKind, dispositionKinds, type FindingResult, findingResults } from '../vocabulary.js';
import { type ContainerStanding, containerStandings } from './container-standing.js';

export class RecallContainerPageDto extends PageDto {
  /** Only those that stand so; left out: all. */
  @MayBeLeftOut() @IsIn(containerStandings) standing?: ContainerStanding;
}

export class RecordFindingDto extends EventDto {
  @IsIn(findingResults) result: FindingResult;
  /** Where it was put aside: it is moved there. Only of what was found. */
  @MayBeLeftOut() @NamedId() placeId?: string;
  /** What was written on the tag. */
  @MayBeLeftOut() @PlainText(100) tag?: string;
  @MayBeLeftOut() @NamedId() photoId?: string;
  /** What was seen. Of the thing and never of a client: it is kept in the clear. */
  @MayBeLeftOut() @PlainText(300) note?: string;
}

export class RecordDispositionDto extends EventDto {
  @IsIn(dispositionKinds) kind: DispositionKind;
  /** Of a box: so many pieces; left out: all that is left. */
  @MayBeLeftOut()
  @IsInt()
  @Min(1)
  @Max(maximumPieces)
  pieces?: number;
  /** Another person who saw it. Either a witness or a photo is needed. */
  @MayBeLeftOut()
  @NamedId()
  witnessId?: string;
  @MayBeLeftOut() @NamedId() photoId?: string;
  /** Number of the consignment or of the certificate of destruction. */
  @PlainText(100) reference: string;
  /** Why so. Of the thing and never of a client: it is kept in the clear. */
  @MayBeLeftOut() @PlainText(300) reason?: string;
}
