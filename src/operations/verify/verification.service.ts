import { Worker } from 'node:worker_threads';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Config } from '../../platform/config.js';
import { type DatabasePlace, placeOf } from '../../platform/database/snapshot.js';
import { Problem } from '../../platform/problem.js';
import { ProcessRole } from '../../platform/process-role.js';
import { headsInBackups } from './remembered-heads.file.js';
import type { Concern, Remembered, VerifyReport } from './report-words.js';
import type { VerificationView } from './verification.views.js';

const endingMilliseconds = 200;

export interface VerificationTask {
  place: DatabasePlace;
  remembered: Remembered;
  concern: Concern;
}

/**
 * Verifies the record of one studio while the service goes on: in a thread of its own, one look at a time. Whoever asks
 * for a studio that is being looked at gets that answer.
 */
@Injectable()
export class Verification {
  private readonly asked = new Map<string, Promise<VerificationView>>();
  private turn: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly config: Config,
    private readonly role: ProcessRole,
  ) {}

  verify({ studioId, chainId }: Actor): Promise<VerificationView> {
    const known = this.asked.get(studioId);
    if (known) return known;
    const look = this.turn.then(() => this.look({ studioId, chainId }));
    this.turn = look.catch(() => undefined);
    const answer = look.finally(() => this.asked.delete(studioId));
    this.asked.set(studioId, answer);
    return answer;
  }

  private async look(concern: Concern): Promise<VerificationView> {
    const remembered = await headsInBackups(this.config.backupFolder);
    return viewOf(await this.inThread({ place: placeOf(this.config), remembered, concern }), concern);
  }

  /** @throws Problem not-ready when the service ends, which waits for no long look */
  private inThread(task: VerificationTask): Promise<VerifyReport> {
    return new Promise((resolve, reject) => {
      const worker = new Worker(new URL('./verify.worker.js', import.meta.url), { workerData: task });
      const watch = setInterval(() => this.role.ending && void worker.terminate(), endingMilliseconds);
      worker.once('message', resolve);
      worker.once('error', reject);
      worker.once('exit', () => {
        clearInterval(watch);
        // Without effect when the answer came first.
        reject(brokenOff());
      });
    });
  }
}

function brokenOff(): Problem {
  return new Problem(
    503,
    'not-ready',
    'The service ends, so the record was not verified to its end. Nothing was changed; ask again when it is back.',
  );
}

function viewOf({ studios, registers, wrong, findings }: VerifyReport, concern: Concern): VerificationView {
  const studio = studios.find(({ id }) => id === concern.studioId);
  const register = registers.find(({ chainId }) => chainId === concern.chainId);
  if (!studio) throw new Error(`The studio ${concern.studioId} was not looked at.`);
  const { entries, head, rows, balances, levels, heads, furthestHead } = studio;
  return {
    entries,
    head,
    rows,
    registerRows: register?.rows ?? 0,
    balances,
    levels,
    heads,
    furthestHead: furthestHead && { from: furthestHead.from, sequence: furthestHead.sequence },
    wrong,
    findings: findings.map(({ check, table, id, message }) => ({ check, table, id, message })),
  };
}
