import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound, Problem } from '../platform/problem.js';
import { Session } from './session.entity.js';
import { decideStep, type SessionStep } from './session-states.js';
import { type TraySession, TraySessions } from './tray-sessions.service.js';
import type { SessionState } from './vocabulary.js';

/**
 * The beginning of every write to a session: it is locked until the end of the transaction, loaded as it then stands,
 * and the step is decided by the rule. Sessions are locked before lots.
 */
@Injectable()
export class SessionLock {
  constructor(private readonly traySessions: TraySessions) {}

  /**
   * For a step that needs nothing but the session to be decided.
   * @throws Problem not-found; wrong-state when the rule refuses the step
   */
  async forStep(transaction: Transaction, sessionId: string, step: SessionStep): Promise<TraySession> {
    await transaction.lock('session', [sessionId]);
    const session = await this.traySessions.load(transaction.read, transaction.studioId, sessionId);
    this.decide(step, session.state);
    return session;
  }

  /** The whole row, of which the caller decides. @throws Problem not-found */
  async row(transaction: Transaction, sessionId: string): Promise<Session> {
    const { studioId } = transaction;
    await transaction.lock('session', [sessionId]);
    const session = await transaction.manager.findOneBy(Session, { studioId, id: sessionId });
    if (!session) throw notFound('session', sessionId);
    return session;
  }

  /**
   * @param onTray single-use things that lie on the tray
   * @returns the state that the step leads to
   * @throws Problem wrong-state
   */
  decide(step: SessionStep, state: SessionState, onTray = 0): SessionState {
    const decision = decideStep(step, { state, onTray });
    if (decision.allowed) return decision.state;
    throw new Problem(409, 'wrong-state', decision.message, { state });
  }
}
