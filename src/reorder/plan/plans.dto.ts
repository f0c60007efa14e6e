import { Transform } from 'class-transformer';
import { ArrayMaxSize, ArrayMinSize, ArrayUnique, IsArray, IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { Nested, NestedList } from '../../platform/nested.js';
import { IsPlainDate } from '../../platform/plain-date.js';
import { PlainText } from '../../platform/plain-text.js';
import { maximumPageSize, PageDto, WriteDto } from '../../platform/request.dto.js';
import { type LineDecision, lineDecisions, type PlanState, planStates } from './vocabulary.js';

const mostExtraSessions = 20;
const mostSessionsADay = 100;
const mostPerMille = 10_000;
const mostExtraDays = 365;
/** More than a studio has items. */
const mostLines = 4_000;
const asNumber = ({ value }: { value: unknown }) =>
  typeof value === 'string' && /^\d+$/.test(value) ? Number(value) : value;

export class ExtraSessionsDto {
  @NamedId() procedureId: string;
  /** YYYY-MM-DD, from today on. */
  @IsPlainDate() on: string;
  /** Negative: so many fewer than are booked. */
  @IsInt() @Min(-mostSessionsADay) @Max(mostSessionsADay) sessions: number;
}

/** What is supposed to be different; what is left out is as it is. */
export class WhatIfDto {
  /** Only this item is computed: its kind, with its key. */
  @MayBeLeftOut() @IsIn(['product', 'configuration']) itemKind?: 'product' | 'configuration';
  @MayBeLeftOut() @PlainText(300) itemKey?: string;
  @MayBeLeftOut() @IsInt() @Min(0) @Max(1_000) serviceTargetPerMille?: number;
  /** All lead times, times this; 1000: as they are. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(mostPerMille) leadTimePerMille?: number;
  /** Added to all lead times; they never get shorter than nothing. */
  @MayBeLeftOut() @IsInt() @Min(-mostExtraDays) @Max(mostExtraDays) leadTimeExtraDays?: number;
  /** All prices, times this; 1000: as they are. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(mostPerMille) pricePerMille?: number;
  /** Bookings and what nobody has booked yet, times this; 1000: as they are. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(mostPerMille) bookingsPerMille?: number;
  @MayBeLeftOut() @NestedList(() => ExtraSessionsDto, mostExtraSessions) extraSessions?: ExtraSessionsDto[];
}

export class MakePlanDto extends WriteDto {
  /** `what if`: with something supposed to be different; nothing is ordered from it. */
  @IsIn(['plan', 'what if']) purpose: 'plan' | 'what if';
  @MayBeLeftOut() @Nested(() => WhatIfDto) whatIf?: WhatIfDto;
}

export class CancelPlanDto extends WriteDto {}

export class TakeLevelsDto extends WriteDto {
  /** Which lines; left out: all whose level nobody set by hand. Named ones are taken even then. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(maximumPageSize)
  @ArrayUnique()
  @IsInt({ each: true })
  @Min(1, { each: true })
  @Max(mostLines, { each: true })
  lineNumbers?: number[];
}

export class PlanListDto extends PageDto {
  @MayBeLeftOut() @IsIn(['plan', 'what if']) purpose?: 'plan' | 'what if';
  @MayBeLeftOut() @IsIn(planStates) state?: PlanState;
}

export class PlanLinesDto {
  /** How many at most, 1 to 200; left out: 50. */
  @MayBeLeftOut() @Transform(asNumber) @IsInt() @Min(1) @Max(maximumPageSize) limit?: number;
  /** The `next` of the page before. */
  @MayBeLeftOut() @Transform(asNumber) @IsInt() @Min(0) @Max(mostLines) afterLine?: number;
  @MayBeLeftOut() @IsIn(lineDecisions) decision?: LineDecision;
  @MayBeLeftOut() @NamedId() supplierId?: string;
}
