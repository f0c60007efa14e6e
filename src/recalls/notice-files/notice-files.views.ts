import { LotScopeView, NoticeRemarkView, ReadPartView } from '../recalls.views.js';

/** A notice of a file and what it is read as. A proposal: nothing counts before a person has looked at it. */
export class FileNoticeView {
  /** Which of the file, from 1; of a table the row, as a spreadsheet counts it. */
  number: number;
  /** Everything that stands there, a line a field. */
  text: string;
  scope: LotScopeView;
  /** Stretches of the text and what they were read as; none where fields of their own said all. */
  parts: ReadPartView[];
  remarks: NoticeRemarkView[];
  reference: string | null;
  /** Who published it. */
  issuer: string | null;
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
  /** How many lots here it means. */
  certainLots: number;
  /** And how many it may mean. */
  possibleLots: number;
}

export class NoticeFileView {
  /** How many notices the file holds. */
  notices: number;
  /** In the order of the file, at most a hundred. */
  items: FileNoticeView[];
  /** What to ask on with as `after`, with the file again; null: these were the last. */
  next: number | null;
}
