export class LiveView {
  /** The process answers. */
  status: 'live';
}

export class ReadyView {
  /** The service can work: its database answers and has the schema this version works with. */
  status: 'ready';
  /** Parts that fail while the service serves people all the same: `queue`, which carries what is told of alerts. */
  failing: 'queue'[];
}
