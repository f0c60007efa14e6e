import { useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import type { ScanView } from '../../sessions/tray.views.js';
import type { Event } from '../service/events.js';
import { type Shown, scan } from './tray.requests.js';
import { useInOrder } from './use-in-order.js';

/**
 * What is shown to a tray, one after the other: who scans on while the service still judges loses nothing.
 * @param personId who scans: what waits stays theirs when somebody else takes over the tablet
 */
export function useScans(
  { studioId, sessionId, personId }: { studioId: string; sessionId: string; personId: string },
  onJudged: () => Promise<void>,
) {
  const [last, setLast] = useState<{ scan: ScanView; symbol: string | undefined }>();
  const { waiting, busy, problem, add, sendAgain } = useInOrder<Shown & Event>(
    `scans of ${personId} ${studioId} ${sessionId}`,
    async (shown) => setLast({ scan: await scan(studioId, sessionId, shown), symbol: shown.symbol }),
    onJudged,
  );
  const show = (shown: Shown) => add({ id: uuidv7(), occurredAt: new Date().toISOString(), ...shown });
  return { last, waiting: waiting.length, busy, problem, show, sendAgain };
}
