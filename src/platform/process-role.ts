/**
 * What this process is for: to serve, or to carry out one command from the shell beside a service or without one; and
 * whether it was told to end.
 */
export class ProcessRole {
  /** From the first signal on: nothing new is accepted, what was accepted is finished. */
  ending = false;

  constructor(
    /** Whether timers, queues and first-start work run here. */
    readonly serving: boolean,
  ) {}
}
