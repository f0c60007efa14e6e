import { IsIn, IsInt, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { IsPlainDate } from '../../platform/plain-date.js';
import { PlainText } from '../../platform/plain-text.js';
import { PageDto, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';

const mostTrainees = 500;
const states = ['booked', 'all'] as const;

export class TrainingCoursePageDto extends PageDto {
  /** The first day shown; left out: today in the studio. */
  @MayBeLeftOut() @IsPlainDate() from?: string;
  /** Left out: without those that were cancelled. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}

export class AddTrainingCourseDto extends WriteDto {
  /** Whose kit list each trainee needs. */
  @NamedId() procedureId: string;
  /** Today or later, at most two years ahead. */
  @IsPlainDate() heldOn: string;
  @IsInt() @Min(1) @Max(mostTrainees) trainees: number;
  /** The studio's own name or number of it. Never of a person: it is kept in the clear. */
  @IsOptional() @PlainText(100) reference?: string | null;
}

/** What is left out stays as it is. */
export class ChangeTrainingCourseDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @NamedId() procedureId?: string;
  @MayBeLeftOut() @IsPlainDate() heldOn?: string;
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostTrainees) trainees?: number;
  /** As when it was added: never of a person. */
  @IsOptional() @PlainText(100) reference?: string | null;
}

export class CancelTrainingCourseDto extends WriteDto {
  /** The version that is cancelled. */
  @Version() version: number;
}
