import type { Readable } from 'node:stream';
import { Injectable, Logger } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { csvOf } from '../../platform/csv.js';
import { Database } from '../../platform/database/database.js';
import { spreadsheetOf } from '../../platform/spreadsheet.js';
import { RecallRegister } from '../recall-register.service.js';
import { ContactStates, type StateOfContact } from './contact-states.service.js';
import { ExposedSessions } from './exposed-sessions.service.js';
import type { DescribedUse } from './exposed-uses.service.js';

const usesPerRead = 1_000;
const sheetName = 'Exposures';

/** Names carry the unit; what is derived or estimated says so. */
const columns = [
  'date',
  'occurred_at_utc',
  'client_reference',
  'client_id',
  'client_erased_at_utc',
  'session_id',
  'visit_kind',
  'procedure',
  'place_on_body',
  'artist',
  'certainty',
  'reasons',
  'recalled_maker',
  'recalled_product',
  'recalled_shade',
  'recalled_lot_code',
  'recalled_lot_use_by',
  'recalled_lot_id',
  'recalled_lot_standing',
  'through',
  'recorded_maker',
  'recorded_product',
  'recorded_shade',
  'recorded_lot_code',
  'recorded_lot_use_by',
  'recorded_lot_id',
  'pieces',
  'drops',
  'microlitres_estimate',
  'recalled_share_microlitres_estimate',
  'amount_known',
  'lot_known_by',
  'against_refusal',
  'recorded_from',
  'recorded_at_utc',
  'contact_state',
  'contact_at_utc',
  'use_id',
] as const;

export type ExposureRow = Record<(typeof columns)[number], string | number | null>;

/**
 * Writes all exposures of a recall for a spreadsheet, a row for each use and lot of the recall in it, a part at a time.
 * Clients stand under their references.
 */
@Injectable()
export class ExposureFile {
  private readonly logger = new Logger('recalls');

  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly exposedSessions: ExposedSessions,
    private readonly contactStates: ContactStates,
    private readonly people: People,
  ) {}

  /** @throws Problem not-found before anything is written */
  async csv(actor: Actor, recallId: string): Promise<Readable> {
    await this.register.find(this.database.read, actor.studioId, recallId);
    return csvOf(columns, this.rows(actor, recallId), (error) =>
      this.logger.error(`Exposures could not be written to their end: ${error.message}`),
    );
  }

  /** @throws Problem not-found; invalid-fields when there are more rows than a spreadsheet holds */
  async spreadsheet(actor: Actor, recallId: string): Promise<Buffer> {
    await this.register.find(this.database.read, actor.studioId, recallId);
    return spreadsheetOf(sheetName, columns, this.rows(actor, recallId));
  }

  private async *rows(actor: Actor, recallId: string): AsyncGenerator<ExposureRow> {
    const { studioId, timeZone } = actor;
    const artists = new Map<string, string>();
    for await (const part of this.exposedSessions.all(this.database.read, studioId, recallId, usesPerRead)) {
      const unnamed = new Set(part.map(({ session }) => session.artistId).filter((id) => !artists.has(id)));
      for (const [id, name] of await this.people.namesOf(studioId, [...unnamed])) artists.set(id, name);
      const clients = new Map(
        part.map(({ session: { clientId, clientErasedAt } }) => [
          clientId,
          { clientId, erasedAt: clientErasedAt },
        ]),
      );
      const states = await this.contactStates.of(this.database.read, studioId, recallId, [
        ...clients.values(),
      ]);
      for (const described of part) yield* rowsOf(described, artists, states, timeZone);
    }
  }
}

function* rowsOf(
  { session, use }: DescribedUse,
  artists: ReadonlyMap<string, string>,
  states: ReadonlyMap<string, StateOfContact>,
  timeZone: string,
): Generator<ExposureRow> {
  const state = states.get(session.clientId);
  for (const lot of use.lots) {
    const ways = [...use.through.filter((way) => way === 'mix'), ...(lot.as === 'itself' ? [] : [lot.as])];
    yield {
      date: localDay(use.occurredAt, timeZone),
      occurred_at_utc: use.occurredAt,
      client_reference: session.clientReference,
      client_id: session.clientId,
      client_erased_at_utc: session.clientErasedAt,
      session_id: session.sessionId,
      visit_kind: session.visitKind,
      procedure: session.procedureName,
      place_on_body: session.bodyPlace,
      artist: artists.get(session.artistId) ?? '',
      certainty: use.certainty,
      reasons: use.reasons.join('; '),
      recalled_maker: lot.makerName,
      recalled_product: lot.productName,
      recalled_shade: lot.shade,
      recalled_lot_code: lot.lotCode,
      recalled_lot_use_by: lot.useBy,
      recalled_lot_id: lot.lotId,
      recalled_lot_standing: lot.standing,
      through: ways.length === 0 ? 'directly' : ways.join(' and '),
      recorded_maker: use.makerName,
      recorded_product: use.productName,
      recorded_shade: use.shade,
      recorded_lot_code: use.lotCode,
      recorded_lot_use_by: use.useBy,
      recorded_lot_id: use.lotId,
      pieces: use.pieces,
      drops: use.drops,
      microlitres_estimate: use.microlitres,
      recalled_share_microlitres_estimate: lot.shareMicrolitres,
      amount_known: use.amountKnown ? 'yes' : 'no',
      lot_known_by: use.knownBy,
      against_refusal: use.againstRefusal === null ? null : use.againstRefusal.join('; '),
      recorded_from: session.recordedFrom,
      recorded_at_utc: use.recordedAt,
      contact_state: state?.contactState ?? 'not tried',
      contact_at_utc: state?.latestContact?.occurredAt ?? null,
      use_id: use.id,
    };
  }
}
