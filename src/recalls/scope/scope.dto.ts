import { ArrayMaxSize, IsArray, IsBoolean, IsIn, IsString, Matches } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { Nested, NestedList } from '../../platform/nested.js';
import { IsPlainDate } from '../../platform/plain-date.js';
import { PlainText } from '../../platform/plain-text.js';
import { RawText } from '../../platform/raw-text.js';

/** So many products a scope may name. */
export const maximumItems = 200;
/** So many lots, ranges and spans each of them. */
export const maximumTerms = 5_000;

/** Days, both included; a side that is left out is open. */
export class DaySpanDto {
  @MayBeLeftOut() @IsPlainDate() from?: string;
  @MayBeLeftOut() @IsPlainDate() through?: string;
}

const termKinds = ['all lots', 'code', 'code range', 'use-by', 'manufactured'] as const;

/** Which lots: `code` needs a code, `code range` both ends, `use-by` and `manufactured` their span. */
export class LotTermDto {
  @IsIn(termKinds) kind: (typeof termKinds)[number];
  @MayBeLeftOut() @PlainText(100) code?: string;
  @MayBeLeftOut() @PlainText(100) from?: string;
  @MayBeLeftOut() @PlainText(100) through?: string;
  /** The use-by dates meant; beside a code or a range it belongs to that. */
  @MayBeLeftOut() @Nested(() => DaySpanDto) useBy?: DaySpanDto;
  @MayBeLeftOut() @Nested(() => DaySpanDto) manufactured?: DaySpanDto;
}

export class ScopeItemDto {
  @MayBeLeftOut() @PlainText(300) makerName?: string;
  @MayBeLeftOut() @PlainText(300) productName?: string;
  @MayBeLeftOut() @PlainText(300) shade?: string;
  /** 14 digits each, shorter ones with zeros before them. */
  @IsArray()
  @ArrayMaxSize(200)
  @IsString({ each: true })
  @Matches(/^\d{14}$/, { each: true, message: 'each of $property must be a GTIN of 14 digits' })
  gtins: string[];
  /** Products of the register that are meant; names and GTINs then decide nothing more. */
  @IsArray() @ArrayMaxSize(200) @NamedId({ each: true }) productIds: string[];
  /** Empty: the notice names no lots. */
  @NestedList(() => LotTermDto, maximumTerms) lots: LotTermDto[];
  /** Lots beyond those named may be meant too. */
  @IsBoolean() openEnded: boolean;
}

export class LotScopeDto {
  @NestedList(() => ScopeItemDto, maximumItems, 1) items: ScopeItemDto[];
}

/** A notice as it was written. */
export class NoticeDto {
  @IsIn(['pasted', 'entered', 'csv', 'enforcement json', 'safety gate xml'])
  source: 'pasted' | 'entered' | 'csv' | 'enforcement json' | 'safety gate xml';
  @MayBeLeftOut() @PlainText(200) reference?: string;
  /** Kept as it came. */
  @RawText(1_048_576) text: string;
}
