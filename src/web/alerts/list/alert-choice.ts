import type { AlertView } from '../../../alerts/alerts.views.js';
import type { AlertFilters } from '../alerts.requests.js';

export const severities = ['urgent', 'warning', 'notice'] as const satisfies readonly AlertView['severity'][];
export const states = ['open', 'put off', 'closed', 'all'] as const;
export const orders = ['worst', 'latest'] as const;

/** Which alerts are looked at, and in which order. */
export interface AlertChoice {
  state: (typeof states)[number];
  /** Only those given to whoever looks. */
  isMine: boolean;
  kind: string | null;
  severity: AlertView['severity'] | null;
  order: (typeof orders)[number];
}

/** What an address says: words that are known, nothing personal. Without any: what is open, the worst first. */
export function choiceOf(search: URLSearchParams): AlertChoice {
  return {
    state: known(states, search.get('state')) ?? 'open',
    isMine: search.get('mine') !== null,
    kind: search.get('kind') || null,
    severity: known(severities, search.get('severity')) ?? null,
    order: known(orders, search.get('order')) ?? 'worst',
  };
}

/** The other way round; what goes without saying is left out. */
export function searchOf({ state, isMine, kind, severity, order }: AlertChoice): Record<string, string> {
  return {
    ...(state !== 'open' && { state }),
    ...(isMine && { mine: '' }),
    ...(kind !== null && { kind }),
    ...(severity !== null && { severity }),
    ...(order !== 'worst' && { order }),
  };
}

/** What the service is asked for. */
export function filtersOf({ state, isMine, kind, severity }: AlertChoice): AlertFilters {
  return {
    state: state === 'put off' ? 'open' : state,
    ...(state === 'open' && { putOff: 'no' as const }),
    ...(state === 'put off' && { putOff: 'yes' as const }),
    ...(isMine && { givenTo: 'me' as const }),
    ...(kind !== null && { kind }),
    ...(severity !== null && { severity }),
  };
}

function known<Word extends string>(words: readonly Word[], word: string | null): Word | undefined {
  return words.find((each) => each === word);
}
