/** What this process is for: to serve, or to carry out one command from the shell beside a service or without one. */
export class ProcessRole {
  constructor(
    /** Whether timers, queues and first-start work run here. */
    readonly serving: boolean,
  ) {}
}
