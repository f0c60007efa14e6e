import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import { notFound } from '../platform/problem.js';
import { Client } from './client.entity.js';
import { decideErasure } from './erasure-decision.js';
import type { PreviewErasureDto } from './erasures.dto.js';
import type { ErasurePreviewView } from './erasures.views.js';
import { StandingOfClients } from './standing-of-clients.service.js';

/** What would be answered to a wish for erasure: nothing is asked for, nothing recorded. */
@Injectable()
export class ErasurePreviews {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly standing: StandingOfClients,
  ) {}

  async of(
    actor: Actor,
    clientId: string,
    { ground = 'consent withdrawn' }: PreviewErasureDto,
  ): Promise<ErasurePreviewView> {
    const { studioId } = actor;
    const client = await this.database.reader.manager.findOneBy(Client, { studioId, id: clientId });
    if (!client) throw notFound('client', clientId);
    const [standing] = await this.standing.of(this.database.read, actor, [client], this.clock.now());
    if (!standing) throw notFound('client', clientId);
    const { facts, openSessionIds } = standing;
    const { answer, obstacles, span } = decideErasure(ground, [], facts);
    return {
      clientId,
      ground,
      answer,
      obstacles,
      openSessionIds,
      lastRecordOn: facts.lastRecordOn,
      keptThrough: span?.keptThrough ?? null,
    };
  }
}
