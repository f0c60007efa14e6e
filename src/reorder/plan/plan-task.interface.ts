import type { DatabasePlace } from '../../platform/database/snapshot.js';
import type { DemandFacts } from '../demand/demand-facts.js';
import type { ReplayResultView } from '../replay/replays.views.js';
import type { ComputedItem, PlanItemFacts, PlanSetting } from './item-line.js';
import type { Plan, PlanLine } from './plan.entity.js';
import type { PlanSummary } from './plan-content.interface.js';

/** What the thread is told that makes a plan. */
export interface PlanTask {
  place: DatabasePlace;
  studio: { studioId: string; chainId: string; timeZone: string };
  plan: Pick<Plan, 'id' | 'plannedOn' | 'seed' | 'whatIf'>;
  /** When the plan began to run, ISO 8601. */
  now: string;
  paths: number;
  threads: number;
}

/** A line as it is to be written. */
export type WrittenLine = Omit<PlanLine, 'studioId' | 'id' | 'planId'>;

/** What the thread says. After `lines` it waits to be told that they are written. */
export type PlanMessage =
  | { kind: 'progress'; done: number; items: number }
  | { kind: 'lines'; lines: WrittenLine[] }
  | { kind: 'same'; factsDigest: string; planId: string }
  /** What went wrong with a part of it, for the log: the rest goes on. */
  | { kind: 'fault'; words: string }
  /** What is wrong with what was asked, in words for whoever asked. */
  | { kind: 'failed'; words: string }
  /** `factsDigest` null: of a replay, which is computed anew each time. */
  | { kind: 'done'; factsDigest: string | null; summary: PlanSummary | ReplayResultView };

/** What the thread is told when lines are written. */
export const linesWritten = 'written';

/** What a thread is told that computes items. */
export interface ItemsTask {
  demand: DemandFacts;
  setting: PlanSetting;
  /** Digests of what is computed already. */
  known: ReadonlySet<string>;
}

export interface ItemsWork {
  items: PlanItemFacts[];
}

export interface AnsweredItem extends Pick<PlanItemFacts, 'kind' | 'key'> {
  factsDigest: string;
  /** Null: it is computed already. */
  computed: ComputedItem | null;
  /** Why it could not be computed, for the log; null: it was. */
  fault: string | null;
}

export type ItemsAnswer = AnsweredItem[];
