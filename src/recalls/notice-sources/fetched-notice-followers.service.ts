import { Injectable } from '@nestjs/common';
import type { NoticeFileKind, NoticeRecord } from '../notice-files/notice-record.js';

/** A published notice that was not seen before. */
export interface FetchedNotice {
  kind: NoticeFileKind;
  /** Where it was found, as it may be shown. */
  address: string;
  record: NoticeRecord;
  /** SHA-256 of kind, reference and text, by which the same notice is known again. */
  digest: string;
}

/** Whoever looks at published notices. */
export interface FetchedNoticeFollower {
  name: string;
  /**
   * Takes what is new, some at a time, outside of a transaction. What it throws lets the same ones come again later, so
   * taking one twice must do no more than taking it once.
   */
  take(notices: readonly FetchedNotice[]): Promise<void>;
}

/** Whoever wants published notices registers here at start-up (onModuleInit). */
@Injectable()
export class FetchedNoticeFollowers {
  private readonly followers: FetchedNoticeFollower[] = [];

  register(follower: FetchedNoticeFollower): void {
    this.followers.push(follower);
  }

  all(): readonly FetchedNoticeFollower[] {
    return this.followers;
  }
}
