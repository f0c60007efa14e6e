/**
 * What this process is for: to serve, to deliver beside a service that serves, or to carry out one command from the
 * shell; and whether it was told to end.
 */
export class ProcessRole {
  /** From the first signal on: nothing new is accepted, what was accepted is finished. */
  ending = false;

  constructor(
    /** Whether people and programs are answered here, and first-start work is done. */
    readonly serving: boolean,
    /** Whether this is a worker, which delivers alerts and does what fires by time. */
    readonly working = false,
  ) {}
}
