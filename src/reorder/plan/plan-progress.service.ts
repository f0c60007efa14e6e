import { Injectable } from '@nestjs/common';

/** How far a plan is that runs in this process. */
export interface Progress {
  startedAt: string;
  done: number;
  /** Null: not known yet. */
  items: number | null;
}

/** How far plans are; nobody's record, and gone with the process. */
@Injectable()
export class PlanProgress {
  private readonly under = new Map<string, Progress>();

  of(planId: string): Progress | undefined {
    return this.under.get(planId);
  }

  set(planId: string, progress: Progress): void {
    this.under.set(planId, progress);
  }

  forget(planId: string): void {
    this.under.delete(planId);
  }
}
