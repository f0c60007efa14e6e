import type { AccessKind } from '../clients/client-access.entity.js';
import { ClientView } from '../clients/clients.views.js';
import { ErasureAnswerView } from '../clients/erasures.views.js';
import { LegalClaimView } from '../clients/legal-claims.views.js';
import { RetentionView } from '../identity/studios.views.js';
import { BlendedPigmentView, SessionView } from './session-record.views.js';

export class ExportingStudioView {
  id: string;
  name: string;
  /** IANA name; the local days in this document are its days. */
  timeZone: string;
}

export class ExportedRetentionView {
  /** What the studio set; null: it has not said how long it keeps records. */
  policy: RetentionView | null;
  /** Local day of the last record of a visit; null: none took place. */
  lastRecordOn: string | null;
  /** Last local day on which the record must be kept; null: nothing has to be kept, or it is not known. */
  keptThrough: string | null;
}

/**
 * That somebody at the studio was shown the record. Whoever it was stands there by their role: a client may know when and
 * why they were looked at, but not by whom, unless that is needed to use their rights (ECJ C-579/21 [M]).
 */
export class ExportedAccessView {
  accessedAt: string;
  what: AccessKind;
  role: string | null;
  personId: string | null;
}

/**
 * Everything that is kept of one client, in a structured, commonly used and machine-readable form (GDPR Art. 15(3) and
 * 20(1) [P]): this document describes each field. What Art. 15(1)(a) to (c) and (g) ask besides – purposes, recipients,
 * sources – is the studio's to say.
 */
export class ClientExportView {
  format: 'lotward client export';
  formatVersion: 1;
  exportedAt: string;
  studio: ExportingStudioView;
  client: ClientView;
  retention: ExportedRetentionView;
  /** Every visit in the order in which it was put on record, with what was mixed and used, lots and dates. */
  sessions: SessionView[];
  /** What the house blends among the pigments were made of. */
  blendedPigments: BlendedPigmentView[];
  legalClaims: LegalClaimView[];
  /** What was answered to wishes for erasure. */
  erasureAnswers: ErasureAnswerView[];
  /** Who was shown the record, the latest first; this export is the first of them. */
  accesses: ExportedAccessView[];
}
