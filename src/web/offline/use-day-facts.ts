import { type QueryClient, useQuery, useQueryClient } from '@tanstack/react-query';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import type { ScanView } from '../../sessions/tray.views.js';
import { currentConnection } from '../service/connection.js';
import { isPassing } from '../service/problem.js';
import { request } from '../service/request.js';
import { keepFacts, keptFacts } from './device-store.js';

const askAgainMilliseconds = 60_000;

export const factsKey = (studioId: string) => ['day facts', studioId] as const;

/**
 * What this device knows of the day, asked for again and again while a page is looked at; without network what it last was
 * told, as long as it is of this day. Undefined for whoever lays no trays, and when nothing is known.
 */
export function useDayFacts(standing: StandingView): DayFactsView | undefined {
  return useWhatIsKnown(standing) ?? undefined;
}

/** As `useDayFacts`, but null when nothing is known, and undefined as long as that is being found out. */
export function useWhatIsKnown({ studioId, permissions }: StandingView): DayFactsView | null | undefined {
  const answers = useQueryClient();
  const { data } = useQuery({
    queryKey: factsKey(studioId),
    queryFn: () => toldOrKept(answers, studioId),
    enabled: permissions.includes('work the tray'),
    refetchInterval: askAgainMilliseconds,
  });
  return data;
}

/** What the service tells, else what this page or this device knows of today; null: nothing. @throws ServiceProblem */
export async function toldOrKept(answers: QueryClient, studioId: string): Promise<DayFactsView | null> {
  // Where the service is not reached it is looked for already, and all is asked anew when it is found.
  if (currentConnection().isReached) {
    try {
      const facts = await request('GET', '/studios/{studioId}/day-facts', { studioId });
      // Where the browser keeps nothing, the page knows it until it is closed.
      await keepFacts(facts).catch(() => undefined);
      return facts;
    } catch (error) {
      if (!isPassing(error)) throw error;
    }
  }
  const known =
    answers.getQueryData<DayFactsView | null>(factsKey(studioId)) ??
    (await keptFacts(studioId).catch(() => undefined));
  return known && (await isOfToday(known)) ? known : null;
}

async function isOfToday({ day, timeZone }: DayFactsView): Promise<boolean> {
  // The calendar is loaded with the pages that need it, not with the first.
  const { localDay } = await import('../../identity/local-day.js');
  return localDay(new Date().toISOString(), timeZone) === day;
}

/** A line that the service has just told of is known at once, and not only when the facts are asked for again. */
export function noteLine(answers: QueryClient, studioId: string, scan: ScanView): void {
  const { trayLineId, thing, sessionId, knownBy, occurredAt } = scan;
  if (trayLineId === null || !thing) return;
  answers.setQueryData<DayFactsView | null>(factsKey(studioId), (facts) => {
    if (!facts || facts.lines.some(({ id }) => id === trayLineId)) return facts;
    const { containerId, lotId, productId } = thing;
    const container = facts.containers.find((one) => one.containerId === containerId);
    const line = {
      ...{ id: trayLineId, sessionId, containerId, lotId, productId, knownBy, admittedAt: occurredAt },
      pieces: container?.stockForm === 'pieces' ? 1 : 0,
      serial: null,
    };
    const known = { ...facts, lines: [...facts.lines, line] };
    // A page that opens without network next must know it as well.
    keepFacts(known).catch(() => undefined);
    return known;
  });
}
