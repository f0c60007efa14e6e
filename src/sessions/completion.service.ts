import { Injectable } from '@nestjs/common';
import { microlitresOf } from '../catalogue/drop-size.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import type { CompletedLineDto, CompleteSessionDto, UsedBesidesDto } from './completion.dto.js';
import type { CompletionView } from './completion.views.js';
import { outcomes, type Settlement, settleTray } from './completion-rules.js';
import { lateAmount } from './late-amount.js';
import { MixReader } from './mix-reader.service.js';
import type { MixTotal } from './mix-totals.js';
import { sealedAsComplications } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import { SessionClients, sealerOf } from './session-clients.service.js';
import { SessionLock } from './session-lock.service.js';
import { TrayLine } from './tray-line.entity.js';
import { type LineOnTray, TrayLookUp } from './tray-look-up.service.js';
import { safetyRefusals } from './tray-rules.js';
import type { TraySession } from './tray-sessions.service.js';
import { trayThing } from './tray-thing.js';
import { UseRecorder, type UseToRecord } from './use-recorder.service.js';
import { completionTimeFault, removalFault } from './visit-times.js';
import { writtenUse } from './written-session.js';

/**
 * Completes a session: books what was used and wasted, settles the tray and signs it off, all in one transaction. Nothing
 * that touched the client is refused; what is on hold by now needs a word for each.
 */
@Injectable()
export class Completion {
  constructor(
    private readonly transactions: Transactions,
    private readonly people: People,
    private readonly sessionClients: SessionClients,
    private readonly lock: SessionLock,
    private readonly lookUp: TrayLookUp,
    private readonly containerFacts: ContainerFacts,
    private readonly mixReader: MixReader,
    private readonly recorder: UseRecorder,
  ) {}

  async complete(actor: Actor, sessionId: string, dto: CompleteSessionDto): Promise<CompletionView> {
    const known = await this.sessionClients.of(actor.studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.complete',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const at = occurredAt(dto.occurredAt, transaction.recordedAt);
        const sealer = sealerOf(known);
        const session = await this.lock.forStep(transaction, sessionId, 'complete');
        refuseTime(completionTimeFault(at, session.inSetupAt));
        const besides = dto.besides ?? [];
        await this.people.require(transaction, [
          dto.signedBy,
          ...[...dto.lines, ...besides].flatMap(({ appliedBy }) => appliedBy ?? []),
        ]);
        const lines = await this.lookUp.linesOnTrays(transaction.read, actor.studioId, sessionId, []);
        // Locked before holds are read, so that a hold placed at the same moment is either seen here or comes after.
        await this.recorder.lockLots(
          transaction,
          [...lines, ...besides].map((thing) => thing.containerId),
        );
        const facts = await this.factsOf(transaction, lines, besides);
        const mixed = await this.mixReader.contents(transaction.read, actor.studioId, [sessionId]);
        const settlement = this.settle(lines, facts, dto, mixed);
        const uses = await this.recorder.record(
          transaction,
          { id: sessionId, clientId: session.clientId, sealing: sealer, settled: true },
          [
            ...settlement.uses.map((use) => this.settledUse(use, lines, dto, at)),
            ...besides.map((use, index) => besidesUse(use, index, facts, session, actor, at)),
          ],
          settlement.wastes.map(({ containerId, pieces, microlitres, reason }) => ({
            containerId,
            pieces,
            microlitres,
            reason,
            occurredAt: at,
          })),
        );
        for (const settledAs of outcomes) {
          const settled = settlement.lines.filter((line) => line.settledAs === settledAs);
          await transaction.updateAll(
            TrayLine,
            settled.map((line) => line.lineId),
            { state: 'settled', settledAs, settledAt: at },
          );
        }
        const completed = await transaction.change(
          Session,
          'session',
          { studioId: actor.studioId, id: sessionId },
          session.version,
          {
            state: 'completed',
            completedAt: at,
            signedBy: dto.signedBy,
            signedAt: at,
            complicationsSealed: sealer.seal(dto.complications ?? 'none', sealedAsComplications(sessionId)),
          },
        );
        return {
          sessionId,
          state: 'completed',
          completedAt: at,
          version: completed.version,
          uses: uses.map(writtenUse),
          wastedPieces: settlement.wastes.reduce((sum, waste) => sum + waste.pieces, 0),
        };
      },
    );
  }

  private async factsOf(
    transaction: Transaction,
    lines: readonly LineOnTray[],
    besides: readonly UsedBesidesDto[],
  ): Promise<Map<string, ContainerFact>> {
    const facts = await this.containerFacts.load(transaction.read, transaction.studioId, {
      containerIds: [...lines, ...besides].map((thing) => thing.containerId),
      ended: true,
    });
    const byId = new Map(facts.map((fact) => [fact.containerId, fact]));
    const missing = besides.find((use) => !byId.has(use.containerId));
    if (missing) throw notFound('container', missing.containerId);
    return byId;
  }

  private settle(
    lines: readonly LineOnTray[],
    facts: ReadonlyMap<string, ContainerFact>,
    dto: CompleteSessionDto,
    mixes: readonly MixTotal[],
  ): Settlement {
    const settlement = settleTray(
      lines.flatMap((line) => {
        const fact = facts.get(line.containerId);
        if (!fact) return [];
        const { label, holds } = trayThing(fact, null, []);
        const { id: lineId, containerId, pieces } = line;
        const usedBesides = dto.besides?.some((use) => use.containerId === containerId) ?? false;
        return [{ lineId, containerId, label, stockForm: fact.stockForm, pieces, usedBesides, holds }];
      }),
      mixes,
      dto.lines.map((word) => {
        const line = lines.find(({ id }) => id === word.trayLineId);
        const fact = line && facts.get(line.containerId);
        return {
          lineId: word.trayLineId,
          outcome: word.outcome,
          drops: word.drops ?? null,
          microlitres: fact ? microlitresOf(word, fact.dropMicrolitres) : null,
        };
      }),
    );
    const { faults } = settlement;
    if (faults.length > 0) {
      const undecided = faults.some((fault) => fault.code === 'decision needed');
      throw new Problem(
        409,
        undecided ? 'decision-needed' : 'wrong-state',
        `${faults.map((fault) => fault.message).join(' ')} Nothing was booked; complete the session again with these decided.`,
        { lines: faults },
      );
    }
    return settlement;
  }

  private settledUse(
    use: Settlement['uses'][number],
    lines: readonly LineOnTray[],
    dto: CompleteSessionDto,
    at: string,
  ): UseToRecord {
    const line = lines.find(({ id }) => id === use.lineId);
    const word = dto.lines.find(({ trayLineId }) => trayLineId === use.lineId);
    return {
      containerId: use.containerId,
      mixId: use.mixId,
      trayLineId: use.lineId,
      knownBy: line?.knownBy ?? 'picked from a list',
      pieces: use.pieces,
      drops: use.drops,
      microlitres: use.microlitres,
      againstRefusal: use.againstRefusal,
      ...timesOf(word, at),
      occurredAt: at,
    };
  }
}

/** What was used without having been admitted: judged at the instant of the session, and recorded whatever the answer. */
function besidesUse(
  use: UsedBesidesDto,
  index: number,
  facts: ReadonlyMap<string, ContainerFact>,
  session: TraySession,
  actor: Actor,
  at: string,
): UseToRecord {
  const fact = facts.get(use.containerId);
  if (!fact) throw notFound('container', use.containerId);
  const thing = trayThing(fact, session.assumedOpenedLife, []);
  const amount = lateAmount(use, fact);
  if ('fault' in amount) {
    const { field, message } = amount.fault;
    throw invalidField(field === null ? `besides.${index}` : `besides.${index}.${field}`, message);
  }
  return {
    containerId: use.containerId,
    mixId: null,
    knownBy: 'picked from a list',
    ...amount,
    againstRefusal: safetyRefusals(thing, at, actor.timeZone),
    ...timesOf(use, at),
    occurredAt: at,
  };
}

function timesOf(word: CompletedLineDto | UsedBesidesDto | undefined, at: string) {
  const instantOf = (given: string | undefined) => (given === undefined ? null : occurredAt(given, at));
  const [appliedAt, removedAt] = [instantOf(word?.appliedAt), instantOf(word?.removedAt)];
  refuseTime(removalFault(appliedAt, removedAt));
  return {
    reason: word?.reason ?? null,
    appliedAt,
    removedAt,
    appliedBy: word?.appliedBy ?? null,
  };
}

/** @throws Problem unusable-time */
function refuseTime(fault: string | null): void {
  if (fault !== null) throw new Problem(400, 'unusable-time', fault);
}
