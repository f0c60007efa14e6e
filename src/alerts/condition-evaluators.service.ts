import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import type { OpenCondition } from './open-condition.js';

/** How one room finds all its conditions of some kinds, in the daily sweep. */
export interface ConditionEvaluator {
  /** The room's name. */
  name: string;
  /** Every kind it finds; what it does not find of these kinds is closed. */
  kinds: readonly string[];
  /** @param day the studio's local day, ISO `YYYY-MM-DD` */
  evaluate(transaction: Transaction, day: string): Promise<OpenCondition[]>;
}

/** Rooms to the right register here at start-up (onModuleInit), so that the sweep knows them and they need not know it. */
@Injectable()
export class ConditionEvaluators {
  private readonly evaluators: ConditionEvaluator[] = [];

  register(evaluator: ConditionEvaluator): void {
    for (const other of this.evaluators) {
      const shared = evaluator.kinds.find((kind) => other.kinds.includes(kind));
      if (shared !== undefined) {
        // Each would close what the other finds.
        throw new Error(`Both ${other.name} and ${evaluator.name} evaluate "${shared}".`);
      }
    }
    this.evaluators.push(evaluator);
  }

  /** Whether a kind is a condition that stands and ends; else it is something that happened, once. */
  finds(kind: string): boolean {
    return this.evaluators.some((evaluator) => evaluator.kinds.includes(kind));
  }

  all(): readonly ConditionEvaluator[] {
    return this.evaluators;
  }
}
