/** How it stands with telling one client: the outcome of the latest attempt, else that there was none. */
export type ContactState =
  | 'not tried'
  | 'reached'
  | 'refused'
  | 'no answer'
  | 'message left'
  | 'unreachable'
  | 'erased, cannot be told';

const settled: ReadonlySet<ContactState> = new Set(['reached', 'refused', 'unreachable']);

/**
 * @param latest outcome of the latest attempt; null: there was none
 * @param erased whether who the client was is not known any more
 */
export function contactState(latest: ContactState | null, erased: boolean): ContactState {
  const state = latest ?? 'not tried';
  return erased && !settled.has(state) ? 'erased, cannot be told' : state;
}
