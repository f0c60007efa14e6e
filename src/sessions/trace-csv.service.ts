import type { Readable } from 'node:stream';
import { Injectable, Logger } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { csvOf } from '../platform/csv.js';
import { Trace } from './trace.service.js';
import type { TraceUseView, TraceView } from './trace.views.js';

const usesPerRead = 1_000;

/** Names carry the unit; what is derived or estimated says so. */
const columns = [
  'date',
  'occurred_at_utc',
  'client_reference',
  'client_id',
  'session_id',
  'artist',
  'visit_kind',
  'procedure',
  'place_on_body',
  'maker',
  'product',
  'shade',
  'lot_code',
  'use_by',
  'lot_id',
  'traced_lot_id',
  'through',
  'pieces',
  'drops',
  'microlitres_estimate',
  'traced_share_microlitres_estimate',
  'lot_known_by',
  'against_refusal',
  'reversed_at_utc',
  'recorded_from',
  'recorded_at_utc',
  'use_id',
] as const;

type Row = Record<(typeof columns)[number], string | number | null>;

/** Writes a whole trace as CSV, a read at a time, so that its size does not matter. */
@Injectable()
export class TraceCsv {
  private readonly logger = new Logger('trace');

  constructor(
    private readonly trace: Trace,
    private readonly people: People,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem not-found before anything is written */
  async ofLot(actor: Actor, lotId: string): Promise<Readable> {
    const { studioId } = actor;
    // What is recorded while the file is written stays out of it, so that its parts belong together.
    const recordedUpTo = this.clock.now();
    const read = (after?: string) =>
      this.trace.fromLots(studioId, [lotId], { limit: usesPerRead, after, recordedUpTo });
    const first = await read();
    const artists = new Map<string, string>();
    const nameArtists = async (items: TraceUseView[]) => {
      const unnamed = new Set(items.map((use) => use.artistId).filter((id) => !artists.has(id)));
      if (unnamed.size === 0) return;
      const names = await this.people.namesOf(studioId, [...unnamed]);
      for (const id of unnamed) artists.set(id, names.get(id) ?? '');
    };
    async function* rows(): AsyncGenerator<Row> {
      for (let page: TraceView | undefined = first; page !== undefined; ) {
        await nameArtists(page.items);
        for (const use of page.items) yield* rowsOf(use, artists, actor.timeZone);
        page = page.next === null ? undefined : await read(page.next);
      }
    }
    return csvOf(columns, rows(), (error) =>
      this.logger.error(`A trace could not be written to its end: ${error.message}`),
    );
  }
}

function* rowsOf(use: TraceUseView, artists: Map<string, string>, timeZone: string): Generator<Row> {
  for (const lot of use.lots) {
    yield {
      date: Temporal.Instant.from(use.occurredAt).toZonedDateTimeISO(timeZone).toPlainDate().toString(),
      occurred_at_utc: use.occurredAt,
      client_reference: use.clientReference,
      client_id: use.clientId,
      session_id: use.sessionId,
      artist: artists.get(use.artistId) ?? '',
      visit_kind: use.visitKind,
      procedure: use.procedureName,
      place_on_body: use.bodyPlace,
      maker: use.makerName,
      product: use.productName,
      shade: use.shade,
      lot_code: use.lotCode,
      use_by: use.useBy,
      lot_id: use.lotId,
      traced_lot_id: lot.lotId,
      through: use.through.length === 0 ? 'directly' : use.through.join(' and '),
      pieces: use.pieces,
      drops: use.drops,
      microlitres_estimate: use.microlitres,
      traced_share_microlitres_estimate: lot.shareMicrolitres,
      lot_known_by: use.knownBy,
      against_refusal: use.againstRefusal === null ? null : use.againstRefusal.join('; '),
      reversed_at_utc: use.reversedAt,
      recorded_from: use.recordedFrom,
      recorded_at_utc: use.recordedAt,
      use_id: use.id,
    };
  }
}
