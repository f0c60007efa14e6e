import { Injectable } from '@nestjs/common';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import type { ClientAccessPageView, ClientAccessView } from './client-accesses.views.js';

type AccessRow = Omit<ClientAccessView, 'personName'>;

/** Who was shown a client's record. */
@Injectable()
export class ClientAccesses {
  constructor(
    private readonly database: Database,
    private readonly people: People,
  ) {}

  /** The latest first. */
  async list(actor: Actor, clientId: string, page: PageDto): Promise<ClientAccessPageView> {
    const { studioId } = actor;
    const limit = page.limit ?? defaultPageSize;
    const known = await this.database.read('SELECT id FROM client WHERE studio_id = $1 AND id = $2', [
      studioId,
      clientId,
    ]);
    if (known.length === 0) throw notFound('client', clientId);
    await refuseUnknownStart(this.database.read, 'client_access', studioId, page.after);
    const { shown, next } = pageOf(
      await this.rows(studioId, clientId, limit + 1, page.after),
      limit,
      (row) => row.id,
    );
    const names = await this.people.namesOf(
      studioId,
      shown.flatMap(({ personId }) => personId ?? []),
    );
    return {
      items: shown.map((row) => ({
        ...row,
        personName: row.personId === null ? null : (names.get(row.personId) ?? null),
      })),
      next,
    };
  }

  private rows(studioId: string, clientId: string, limit: number, after?: string): Promise<AccessRow[]> {
    const before =
      after === undefined
        ? ''
        : ` AND (accessed_at, id) < (SELECT last.accessed_at, last.id FROM client_access AS last
            WHERE last.studio_id = $1 AND last.id = $4)`;
    return this.database.read<AccessRow>(
      `SELECT id, person_id AS "personId", what, accessed_at AS "accessedAt" FROM client_access
       WHERE studio_id = $1 AND client_id = $2${before}
       ORDER BY accessed_at DESC, id DESC LIMIT $3`,
      [studioId, clientId, limit, ...(after === undefined ? [] : [after])],
    );
  }
}
