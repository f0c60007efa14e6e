import { Injectable } from '@nestjs/common';
import { ClientAccessLog } from '../clients/client-access-log.service.js';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders } from '../platform/database/database.js';
import { notFound, Problem } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import { BlendAncestry } from './blend-ancestry.service.js';
import { lotsInUse } from './lots-in-use.js';
import { SisterLots } from './sister-lots.service.js';
import type { TraceLotsDto } from './trace.dto.js';
import type { LotTraceView, TraceUseView, TraceView } from './trace.views.js';
import { type TracedUse, type UsePageRequest, UsePages } from './use-page.service.js';

const defaultPageSize = 200;

/**
 * From lots to everyone they touched and back, through mixes and through house blends of any depth. Guarantees: nothing
 * is left out without being counted; reversed uses are shown as such; one question to the database finds the uses, and
 * one more the blends when there are any.
 */
@Injectable()
export class Trace {
  constructor(
    private readonly database: Database,
    private readonly usePages: UsePages,
    private readonly ancestry: BlendAncestry,
    private readonly sisterLots: SisterLots,
    private readonly accessLog: ClientAccessLog,
  ) {}

  /** @throws Problem not-found when a lot is not in this studio */
  async ofLot(actor: Actor, lotId: string, page: PageDto): Promise<LotTraceView> {
    const trace = await this.fromLots(actor.studioId, [lotId], requestOf(page));
    return { ...trace, sisterLots: await this.sisterLots.of(actor.studioId, lotId) };
  }

  /** @throws Problem not-found when any of the lots is not in this studio */
  async ofLots(actor: Actor, dto: TraceLotsDto): Promise<TraceView> {
    return this.fromLots(actor.studioId, dto.lotIds, requestOf(dto));
  }

  async fromLots(studioId: string, lotIds: readonly string[], request: UsePageRequest): Promise<TraceView> {
    const { totals, uses, next, foundLots, blended } = await this.usePages.page(
      studioId,
      { lotIds },
      request,
    );
    if (foundLots < lotIds.length) await this.refuseUnknownLots(studioId, lotIds);
    const pourings = blended ? await this.ancestry.pouringsFrom(studioId, lotIds) : [];
    const asked = new Set(lotIds);
    const lotsOf = lotsInUse(pourings);
    const items = uses.map((use) => {
      const lots = lotsOf(use).filter((lot) => asked.has(lot.lotId));
      return {
        ...use,
        through: throughOf(
          use,
          lots.some((lot) => !lot.direct),
        ),
        lots,
      };
    });
    return { totals, items, next };
  }

  async ofClient(actor: Actor, clientId: string, page: PageDto): Promise<TraceView> {
    const { studioId } = actor;
    await this.require(studioId, 'client', clientId);
    await this.accessLog.note(actor, 'client trace', [clientId]);
    return this.toLots(studioId, { clientId }, requestOf(page));
  }

  async ofSession(actor: Actor, sessionId: string, page: PageDto): Promise<TraceView> {
    const { studioId } = actor;
    const { clientId } = await this.require(studioId, 'session', sessionId);
    await this.accessLog.note(actor, 'session trace', [clientId]);
    return this.toLots(studioId, { sessionId }, requestOf(page));
  }

  private async toLots(
    studioId: string,
    choice: { clientId: string } | { sessionId: string },
    request: UsePageRequest,
  ): Promise<TraceView> {
    const { totals, uses, next } = await this.usePages.page(studioId, choice, request);
    const pourings = await this.ancestry.pouringsInto(
      studioId,
      uses.map((use) => use.lotId),
    );
    const lotsOf = lotsInUse(pourings);
    const items = uses.map((use) => {
      const lots = lotsOf(use);
      return { ...use, through: throughOf(use, lots.length > 1), lots };
    });
    return { totals, items, next };
  }

  private async require(
    studioId: string,
    what: 'client' | 'session',
    id: string,
  ): Promise<{ clientId: string }> {
    const [row] = await this.database.read<{ clientId: string }>(
      `SELECT ${what === 'client' ? 'id' : 'client_id'} AS "clientId" FROM ${what} WHERE studio_id = $1 AND id = $2`,
      [studioId, id],
    );
    if (!row) throw notFound(what, id);
    return row;
  }

  private async refuseUnknownLots(studioId: string, lotIds: readonly string[]): Promise<never> {
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM lot WHERE studio_id = $1 AND id IN (${placeholders(lotIds)})`,
      [studioId, ...lotIds],
    );
    const known = new Set(rows.map((row) => row.id));
    const unknown = lotIds.filter((lotId) => !known.has(lotId));
    if (unknown.length === 1 && unknown[0] !== undefined) throw notFound('lot', unknown[0]);
    throw new Problem(
      404,
      'not-found',
      `This studio has no lots with the ids ${unknown.join(', ')}. Leave them out, or look in the studio that has them.`,
      { lotIds: unknown },
    );
  }
}

function requestOf({ limit, after }: { limit?: number; after?: string }): UsePageRequest {
  return { limit: limit ?? defaultPageSize, after };
}

function throughOf(use: TracedUse, blend: boolean): TraceUseView['through'] {
  return [...(use.mixId === null ? [] : (['mix'] as const)), ...(blend ? (['house blend'] as const) : [])];
}
