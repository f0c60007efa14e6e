import type BetterSqlite3 from 'better-sqlite3';
import { v7 as uuidv7 } from 'uuid';
import { makeLabelCode } from '../../src/catalogue/own-label.js';
import type { Actor } from '../../src/platform/actor.js';
import type { SeededRandom } from '../support/random.js';

export interface LotOnShelf {
  lotId: string;
  containerId: string;
  code: string;
}

export const makerName = 'Maker 1';
/** Uses in a session, */
const usedInSession = 9;
/** and one piece that was opened and not used. */
export const movementsInSession = usedInSession + 1;

/**
 * Writes what a studio did in the course of years straight into a database made by the service's own migrations, with all
 * its checks, keys and triggers at work.
 */
export class LedgerWriter {
  private readonly statements = new Map<string, BetterSqlite3.Statement>();
  private readonly clientIds: string[] = [];
  private readonly procedureId = uuidv7();
  private readonly recorded: { via: string; person_id: string | null };

  constructor(
    private readonly database: BetterSqlite3.Database,
    private readonly actor: Actor,
    /** When everything but the sessions was recorded. */
    private readonly at: string,
  ) {
    this.recorded = { via: 'api', person_id: actor.personId };
  }

  /** Inserts a row; the statement for its table and columns is prepared once. */
  private insert(table: string, row: Record<string, string | number | null>): void {
    let statement = this.statements.get(table);
    if (!statement) {
      const columns = Object.keys(row);
      statement = this.database.prepare(
        `INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map((column) => `@${column}`).join(', ')})`,
      );
      this.statements.set(table, statement);
    }
    statement.run(row);
  }

  /** A maker and products, which all studios of the chain share. @returns the products' ids */
  register(products: number): string[] {
    const { chainId } = this.actor;
    const makerId = uuidv7();
    const created_at = this.at;
    this.insert('maker', { chain_id: chainId, id: makerId, name: makerName, version: 1, created_at });
    return Array.from({ length: products }, (_, index) => {
      const id = uuidv7();
      const own = {
        maker_id: makerId,
        kind: 'cartridge',
        name: `Product ${index + 1}`,
        stock_form: 'pieces',
        points: 3,
      };
      this.insert('product', {
        chain_id: chainId,
        id,
        ...own,
        colour_index_numbers: '[]',
        version: 1,
        created_at,
      });
      return id;
    });
  }

  /** Clients and lots, each lot one box that holds more than is ever used. */
  lots(productIds: readonly string[], lots: number, clients: number, random: SeededRandom): LotOnShelf[] {
    const { studioId } = this.actor;
    const created_at = this.at;
    const placeId = uuidv7();
    this.insert('place', { studio_id: studioId, id: placeId, name: 'Shelf', kind: 'shelf', created_at });
    this.insert('procedure', {
      studio_id: studioId,
      id: this.procedureId,
      name: 'Powdered brows',
      body_place: 'brows',
      touch_up_from_days: 30,
      touch_up_to_days: 40,
      version: 1,
      created_at,
    });
    const { data_key_id } = this.database
      .prepare('SELECT data_key_id FROM person WHERE studio_id = ?')
      .get(studioId) as { data_key_id: string };
    for (let index = 0; index < clients; index += 1) {
      const id = uuidv7();
      this.clientIds.push(id);
      this.insert('client', {
        studio_id: studioId,
        id,
        reference: `C${index}`,
        data_key_id,
        version: 1,
        created_at,
      });
    }
    return Array.from({ length: lots }, (_, index) =>
      this.lot(productIds[index % productIds.length] ?? '', `L${index}`, placeId, random),
    );
  }

  private lot(productId: string, code: string, placeId: string, random: SeededRandom): LotOnShelf {
    const { studioId, chainId } = this.actor;
    const [lotId, containerId] = [uuidv7(), uuidv7()];
    this.insert('lot', {
      studio_id: studioId,
      id: lotId,
      chain_id: chainId,
      product_id: productId,
      code,
      code_state: 'printed',
      use_by: '2099-12-31',
      use_by_precision: 'day',
      origin: 'delivery',
      version: 1,
      created_at: this.at,
    });
    this.insert('lot_code', {
      studio_id: studioId,
      id: uuidv7(),
      lot_id: lotId,
      kind: 'lot',
      code,
      recorded_at: this.at,
    });
    this.insert('container', {
      studio_id: studioId,
      id: containerId,
      lot_id: lotId,
      form: 'box',
      label_code: makeLabelCode(Uint8Array.from({ length: 12 }, () => random.below(256))),
      place_id: placeId,
      state: 'sealed',
      received_at: this.at,
      version: 1,
    });
    this.movement(containerId, lotId, null, 'received', 1_000_000, this.at);
    return { lotId, containerId, code };
  }

  /** A completed session: all but the last of `taken` touched the client. */
  session(at: string, taken: readonly LotOnShelf[], random: SeededRandom): void {
    const { studioId, personId } = this.actor;
    const sessionId = uuidv7();
    const clientId = this.clientIds[random.below(this.clientIds.length)] ?? '';
    this.insert('session', {
      studio_id: studioId,
      id: sessionId,
      client_id: clientId,
      artist_id: personId,
      procedure_id: this.procedureId,
      visit_kind: 'first session',
      body_place: 'brows',
      state: 'completed',
      planned_at: at,
      completed_at: at,
      recorded_from: 'tray',
      signed_by: personId,
      signed_at: at,
      version: 3,
      created_at: at,
    });
    taken.forEach(({ lotId, containerId, code }, index) => {
      const isUse = index < usedInSession;
      const movementId = this.movement(containerId, lotId, sessionId, isUse ? 'used' : 'wasted', -1, at);
      if (!isUse) return;
      this.insert('session_use', {
        studio_id: studioId,
        id: uuidv7(),
        session_id: sessionId,
        client_id: clientId,
        lot_id: lotId,
        container_id: containerId,
        movement_id: movementId,
        known_by: "maker's symbol",
        pieces: 1,
        microlitres: 0,
        maker_name: makerName,
        product_name: 'Product',
        lot_code: code,
        codes: '[]',
        use_by: '2099-12-31',
        occurred_at: at,
        recorded_at: at,
        ...this.recorded,
      });
    });
  }

  private movement(
    containerId: string,
    lotId: string,
    sessionId: string | null,
    kind: string,
    pieces: number,
    at: string,
  ): string {
    const id = uuidv7();
    this.insert('movement', {
      studio_id: this.actor.studioId,
      id,
      lot_id: lotId,
      container_id: containerId,
      session_id: sessionId,
      kind,
      pieces,
      microlitres: 0,
      occurred_at: at,
      recorded_at: at,
      ...this.recorded,
    });
    return id;
  }
}
