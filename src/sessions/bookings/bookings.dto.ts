import { IsIn } from 'class-validator';
import { JudgeFileDto, TakeInFileDto } from '../../platform/files/file-text.dto.js';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { type VisitKind, visitKinds } from '../vocabulary.js';

export class JudgeBookingsDto extends JudgeFileDto {
  /** Whose bookings those are that name nobody. */
  @MayBeLeftOut() @NamedId() artistId?: string;
  /** Of bookings that name none. In a calendar left out: entries that name none are no bookings. */
  @MayBeLeftOut() @NamedId() procedureId?: string;
  /** Of bookings that say none. */
  @MayBeLeftOut() @IsIn(visitKinds) visitKind?: VisitKind;
}

export class TakeInBookingsDto extends TakeInFileDto {
  /** Whose bookings those are that name nobody. */
  @MayBeLeftOut() @NamedId() artistId?: string;
  /** Of bookings that name none. In a calendar left out: entries that name none are no bookings. */
  @MayBeLeftOut() @NamedId() procedureId?: string;
  /** Of bookings that say none. */
  @MayBeLeftOut() @IsIn(visitKinds) visitKind?: VisitKind;
}
