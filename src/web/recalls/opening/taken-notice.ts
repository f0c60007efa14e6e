import type { MatchedLotsView, NoticeRemarkView, ReadPartView } from '../../../recalls/recalls.views.js';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';

/** What a notice says beside its lots, as it is typed. */
export interface SaidFields {
  issuer: string;
  reference: string;
  /** YYYY-MM-DD */
  issuedOn: string;
  classification: string;
  risk: string;
  remedy: string;
}

export const nothingSaid: SaidFields = {
  issuer: '',
  reference: '',
  issuedOn: '',
  classification: '',
  risk: '',
  remedy: '',
};

/** Where a notice came from: written into the request that opens the recall, or on record already. */
export type NoticeOrigin =
  | { kind: 'written'; source: 'pasted' | 'entered' | 'csv' | 'enforcement json' | 'safety gate xml' }
  | { kind: 'on record'; noticeId: string };

export const byHandOrigin: NoticeOrigin = { kind: 'written', source: 'entered' };

/** A notice that was read, with what it was read as. */
export interface TakenNotice {
  /** Null: it was entered by hand, there is no text. */
  origin: NoticeOrigin | null;
  /** Empty when there is none. */
  text: string;
  parts: ReadPartView[];
  remarks: NoticeRemarkView[];
  /** What is proposed; null: nothing yet. */
  scope: LotScope | null;
  /** What the proposal meets, where that was answered with it. */
  matches: MatchedLotsView | undefined;
  said: SaidFields;
}

/** Entered by hand, from nothing. */
export const byHand: TakenNotice = {
  origin: null,
  text: '',
  parts: [],
  remarks: [],
  scope: null,
  matches: undefined,
  said: nothingSaid,
};

/** What is said, as the service takes it: what is empty is left out. */
export function saidBody(said: SaidFields) {
  return Object.fromEntries(
    Object.entries(said)
      .map(([name, value]) => [name, value.trim()] as const)
      .filter(([, value]) => value !== ''),
  ) as Partial<SaidFields>;
}

/** What a reading says beside the lots. */
export function saidOf(
  reading: { [Field in Exclude<keyof SaidFields, 'issuer'>]: string | null } & { issuer?: string | null },
): SaidFields {
  return {
    issuer: reading.issuer ?? '',
    reference: reading.reference ?? '',
    issuedOn: reading.issuedOn ?? '',
    classification: reading.classification ?? '',
    risk: reading.risk ?? '',
    remedy: reading.remedy ?? '',
  };
}
