import {
  ArrayMaxSize,
  ArrayUnique,
  IsArray,
  IsIn,
  IsString,
  Length,
  Matches,
  ValidateIf,
} from 'class-validator';
import { IsLocalTime } from '../../platform/local-time.js';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { severities } from '../open-condition.js';

const toldFrom = [...severities, 'never'] as const;
const urgentTurns = ['at once', 'in turn'] as const;
const summaries = ['daily', 'never'] as const;
const mostKinds = 100;
const longestKind = 100;
const notNull = (_: object, value: unknown) => value !== null;

export class SetAlertPreferenceDto extends WriteDto {
  /** Told of each alert from this severity on; what is milder is in the summary of the morning. */
  @IsIn(toldFrom) toldFrom: (typeof toldFrom)[number];
  /** Of urgent ones: at once, or only when it is their turn in the order of people. */
  @IsIn(urgentTurns) urgentTurn: (typeof urgentTurns)[number];
  @IsIn(summaries) summary: (typeof summaries)[number];
  /** Local time, `HH:MM`; null: the studio's morning. */
  @ValidateIf(notNull) @IsLocalTime() summaryAt: string | null;
  /** Local times between which only what is urgent is told, also across midnight; both null: none. */
  @ValidateIf(notNull) @IsLocalTime() quietFrom: string | null;
  @ValidateIf(notNull) @IsLocalTime() quietUntil: string | null;
  /** Kinds of alerts one is not told of, unless they are urgent. */
  @IsArray()
  @ArrayMaxSize(mostKinds)
  @ArrayUnique({ message: 'kindsLeftOut names a kind twice; name each once' })
  @IsString({ each: true })
  @Length(1, longestKind, { each: true })
  @Matches(/^[^\p{Cc}\p{Cs}]*$/u, { each: true, message: 'kindsLeftOut must not hold control characters' })
  kindsLeftOut: string[];
  /** The version this change was made from; left out when nothing was chosen yet. */
  @MayBeLeftOut() @Version() version?: number;
}
