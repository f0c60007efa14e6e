import { ArrayMaxSize, IsArray, IsBoolean, IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { Nested } from '../platform/nested.js';
import { IsPlainDate } from '../platform/plain-date.js';
import { PlainText } from '../platform/plain-text.js';
import { RawText } from '../platform/raw-text.js';
import { EventDto, PageDto } from '../platform/request.dto.js';
import { LotScopeDto, NoticeDto } from './scope/scope.dto.js';
import { lotDecisions, recallStates } from './vocabulary.js';

const heldPossible = ['all', 'none', 'chosen'] as const;

/** What a notice says of a recall besides its lots. */
export class StatedRecallDto extends EventDto {
  /** The notice as it was written. */
  @MayBeLeftOut() @Nested(() => NoticeDto) notice?: NoticeDto;
  /** A notice that is on record already, instead. */
  @MayBeLeftOut() @NamedId() noticeId?: string;
  @Nested(() => LotScopeDto) scope: LotScopeDto;
  /** Who recalls. */
  @MayBeLeftOut() @PlainText(300) issuer?: string;
  @MayBeLeftOut() @PlainText(200) reference?: string;
  @MayBeLeftOut() @IsPlainDate() issuedOn?: string;
  @MayBeLeftOut() @PlainText(100) classification?: string;
  /** The risk in the words of the notice. */
  @MayBeLeftOut() @RawText(5_000) risk?: string;
  /** What the notice offers or asks to be done. */
  @MayBeLeftOut() @RawText(5_000) remedy?: string;
  /** Which of the lots that are only possibly meant are held too; left out: all of them. */
  @MayBeLeftOut() @IsIn(heldPossible) holdPossible?: (typeof heldPossible)[number];
  /** Those that were chosen. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMaxSize(1_000)
  @NamedId({ each: true })
  heldLotIds?: string[];
}

export class OpenRecallDto extends StatedRecallDto {
  /** What it is called here. Never of a client: it is kept in the clear, and leaves in alerts, mail and webhooks. */
  @PlainText(200) title: string;
  /** Every studio of the chain has its part; for whoever leads them all. */
  @MayBeLeftOut() @IsBoolean() chainWide?: boolean;
}

export class AmendRecallDto extends StatedRecallDto {
  /** Why, such as "the maker added lots". */
  @PlainText(500) reason: string;
  /** Whether the release of holds on lots that the new scope does not meet is asked for; another person releases them. */
  @MayBeLeftOut() @IsBoolean() releaseUnmet?: boolean;
}

export class DecideLotDto extends EventDto {
  @IsIn(lotDecisions) decision: (typeof lotDecisions)[number];
  /** What was seen. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(500) reason: string;
}

export class WithdrawRecallDto extends EventDto {
  @PlainText(500) reason: string;
}

export class DismissNoticeDto extends EventDto {
  @PlainText(500) reason: string;
}

export class RecallPageDto extends PageDto {
  /** Left out: all. */
  @MayBeLeftOut() @IsIn(recallStates) state?: (typeof recallStates)[number];
}

export class ReadNoticeDto {
  @RawText(1_048_576) text: string;
}

export class MatchScopeDto {
  @Nested(() => LotScopeDto) scope: LotScopeDto;
}
