import type { BodyPlace, VisitKind } from '../../sessions/vocabulary.js';
import type { Certainty, ExposureReason } from '../exposures/exposure-certainty.js';
import type { ContactAudience } from '../vocabulary.js';

export const messageLanguages = ['en', 'de'] as const;
export type MessageLanguage = (typeof messageLanguages)[number];

export type MessageAudience = ContactAudience;

/** What a message says of the recall itself, whoever it is for. */
export interface MessageRecall {
  studioName: string;
  /** How the studio is reached, in its own words; null: the studio set none. */
  contactPoint: string | null;
  issuer: string | null;
  reference: string | null;
  /** Day of the notice, ISO `YYYY-MM-DD`. */
  issuedOn: string | null;
  /** In the words of the notice. */
  risk: string | null;
  remedy: string | null;
}

/** A lot that a message names. */
export interface MessageLot {
  lotId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  /** Labelled volume of one container; null: not known, or counted in pieces. */
  volumeMicrolitres: number | null;
  gtins: readonly string[];
  /** As printed; null: none is printed or it cannot be read. */
  code: string | null;
  /** Further codes on record for it, corrected ones included. */
  otherCodes: readonly string[];
  useBy: string | null;
  /** True: only the month is printed. */
  useByMonthOnly: boolean;
  manufacturedOn: string | null;
  certainty: Certainty;
}

/** How a lot came to the client. */
export type Through = 'direct' | 'mix' | 'house blend';

/** That a lot touched, or may have touched, the client in a session. */
export interface ClientExposure {
  lotId: string;
  /** The studio's day, ISO. */
  day: string;
  visitKind: VisitKind;
  bodyPlace: BodyPlace;
  through: Through;
  certainty: Certainty;
  /** Empty: it is certain. */
  because: readonly ExposureReason[];
}

/** What an artist used of a lot, or has of it. */
export interface ArtistPart {
  lotId: string;
  /** Sessions in which they used it, directly or in a blend. */
  sessions: number;
  firstDay: string | null;
  lastDay: string | null;
  /** Label codes of their own containers that are still here. */
  containers: readonly string[];
}

/** That a supplier delivered a lot. */
export interface SupplierDelivery {
  lotId: string;
  day: string;
  reference: string | null;
  pieces: number;
}

/** What an authority is told of the studio's answer, in numbers. */
export interface AuthorityFigures {
  clientsCertain: number;
  clientsPossible: number;
  clientsTold: number;
  /** The studio's days of the first and the last use, ISO. */
  firstDay: string | null;
  lastDay: string | null;
}

interface Common {
  language: MessageLanguage;
  recall: MessageRecall;
  /** Those that concern the recipient, and no others. */
  lots: readonly MessageLot[];
}

/** Everything a message is made of. */
export type MessageFacts =
  | (Common & { audience: 'client'; exposures: readonly ClientExposure[] })
  | (Common & { audience: 'artist'; parts: readonly ArtistPart[] })
  | (Common & { audience: 'supplier'; deliveries: readonly SupplierDelivery[] })
  | (Common & { audience: 'authority'; figures: AuthorityFigures });
