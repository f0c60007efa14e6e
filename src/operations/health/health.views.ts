export class LiveView {
  /** The process answers. */
  status: 'live';
}

export class ReadyView {
  /** The service can work: its database answers and has the schema this version works with. */
  status: 'ready';
}
