import { CompletedUseView } from './completion.views.js';

/** The answer to a record made or amended afterwards, which is kept and so holds nothing personal. */
export class RecordedUsesView {
  id: string;
  state: 'completed';
  version: number;
  clientId: string;
  clientReference: string;
  followsSessionId: string | null;
  /** What was recorded by this request. */
  uses: CompletedUseView[];
  /** Lots that were not on record and were made for it. */
  madeLotIds: string[];
  /** What should be looked at, such as a code that is known with another use-by date. */
  warnings: string[];
}

export class ReversedUseView {
  useId: string;
  sessionId: string;
  /** The session's version after it. */
  version: number;
  /** What went back on the book. */
  pieces: number;
  /** An estimate. */
  microlitres: number;
}
