import type { BodyPlace, VisitKind } from '../../sessions/vocabulary.js';
import type { ExposureReason } from '../exposures/exposure-certainty.js';
import type {
  ArtistPart,
  AuthorityFigures,
  ClientExposure,
  MessageAudience,
  MessageLot,
  MessageRecall,
  SupplierDelivery,
  Through,
} from './message-facts.js';

/** The sentences of a language. Each is a paragraph or part of one; lots are named by `lotName`. */
export interface MessageTexts {
  heading: string;
  /** @param certain false: nothing of it is more than possible */
  opening: (audience: MessageAudience, recall: MessageRecall, certain: boolean) => string;
  /** Everything that tells the product and the lot. */
  product: (lot: MessageLot) => string;
  /** A lot in the middle of a sentence. */
  lotName: (lot: MessageLot) => string;
  /** Where the number of the lot is to be found. */
  whereTheNumberIs: (audience: MessageAudience) => string;
  exposure: (exposure: ClientExposure, lot: string, studioName: string) => string;
  artistPart: (part: ArtistPart, lot: string, studioName: string) => string;
  delivery: (delivery: SupplierDelivery, lot: string, studioName: string) => string;
  figures: (figures: AuthorityFigures, studioName: string) => string;
  /** @param risk null: the notice names none */
  hazard: (risk: string | null) => string;
  stop: (audience: MessageAudience, studioName: string) => string;
  /** To clients only, and nothing beyond it. @param signs empty: the notice names none */
  signs: (signs: readonly string[]) => string;
  /** @param remedy null: the notice names none */
  remedy: (audience: MessageAudience, remedy: string | null, issuer: string | null) => string;
  contact: (audience: MessageAudience, studioName: string, contactPoint: string | null) => string;
  share: (audience: MessageAudience) => string;
  visitKinds: Record<VisitKind, string>;
  bodyPlaces: Record<BodyPlace, string>;
  through: Record<Through, string>;
  because: Record<ExposureReason, string>;
}
