import { IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { RawText } from '../../platform/raw-text.js';
import { type NoticeFileKind, noticeFileKinds } from './notice-record.js';

/** So long may a file of notices be. */
export const maximumNoticeFileCharacters = 4_000_000;

/** A file of notices to be read; nothing is written. */
export class ReadNoticeFileDto {
  /** A table by the columns of the documentation, enforcement reports as openFDA writes them, or a weekly report. */
  @IsIn(noticeFileKinds) kind: NoticeFileKind;

  /** As it stands in the file, up to 4,000,000 characters. */
  @RawText(maximumNoticeFileCharacters, {
    nul: 'The file is no text: it holds the character NUL. Save it as UTF-8.',
    halves: 'The file is damaged: it holds halves of characters. Save it anew as UTF-8.',
  })
  text: string;

  /** From which notice of the file on, by the `next` of the answer before; left out: from the first. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(1_000_000) after?: number;
}
