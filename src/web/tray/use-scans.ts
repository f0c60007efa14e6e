import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useRef, useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import { type DayFacts, judgeOnDevice } from '../../sessions/day-facts.js';
import type { ScanView } from '../../sessions/tray.views.js';
import { judgedHere, scanViewHere } from '../offline/judged-here.js';
import { withWaiting } from '../offline/known-day.js';
import { outgoing } from '../offline/outgoing.js';
import { isScanAnswer } from '../offline/send-write.js';
import { noteLine } from '../offline/use-day-facts.js';
import { useWaiting, type Whose } from '../offline/use-waiting.js';
import type { WaitingScan } from '../offline/waiting-write.js';
import { useConnection } from '../service/connection.js';
import type { Shown } from './tray.requests.js';

/** A verdict is shown within a second: one that takes longer is given on this device until the service answers. */
const patienceMilliseconds = 1_000;

export interface LastScan {
  scan: ScanView;
  symbol: string | undefined;
  /** The service has not seen it yet. */
  onDevice: boolean;
}

/**
 * What is shown to a tray, one after the other: who scans on while the service still judges loses nothing. Without network,
 * or when it is slow, a scan is judged on this device by the same rules.
 * @param facts what this device knows of the day; undefined: nothing
 */
export function useScans(whose: Whose, facts: DayFacts | undefined, onJudged: () => Promise<void>) {
  const { studioId } = whose;
  const answers = useQueryClient();
  const connection = useConnection();
  const [last, setLast] = useState<LastScan>();
  const latestId = useRef<string>(undefined);
  const known = useRef(facts);
  known.current = facts;

  const sending = useWaiting('scan', whose, (write, answer) => {
    if (!isScanAnswer(answer)) return;
    // What was judged here is on the page already, and something else may have been shown since.
    if (write.judgedHere === undefined || write.id === latestId.current) {
      setLast({ scan: answer, symbol: write.shown.symbol, onDevice: false });
    }
    noteLine(answers, studioId, answer);
    void onJudged();
  });

  const judgeHere = useCallback((id: string) => {
    const { waiting } = outgoing.snapshot();
    const scan = waiting.find((write): write is WaitingScan => write.id === id && write.kind === 'scan');
    if (!scan || scan.judgedHere !== undefined) return;
    const day = known.current && withWaiting(known.current, waiting);
    const judgement = day && judgeOnDevice(day, scan.sessionId, scan.shown, { id, at: scan.occurredAt });
    if (judgement?.kind !== 'judged') {
      outgoing.judgedHere(id, null);
      return;
    }
    outgoing.judgedHere(id, judgedHere(judgement));
    setLast({
      scan: scanViewHere(scan, judgement, day as DayFacts),
      symbol: scan.shown.symbol,
      onDevice: true,
    });
  }, []);

  // What was under way when the connection was lost is judged here at once.
  const { isReached } = connection;
  const { waiting } = sending;
  useEffect(() => {
    if (isReached) return;
    for (const { id } of waiting) judgeHere(id);
  }, [isReached, waiting, judgeHere]);

  const show = (shown: Shown) => {
    const scan = { id: uuidv7(), occurredAt: new Date().toISOString(), shown };
    latestId.current = scan.id;
    sending.add(scan);
    setTimeout(() => judgeHere(scan.id), patienceMilliseconds);
  };
  return {
    last,
    waiting: waiting.length,
    busy: sending.busy && isReached,
    problem: sending.problem,
    /** Whether what was shown last is neither known here nor judged by the service. */
    isUnknown: waiting.at(-1)?.judgedHere === null,
    show,
    sendAgain: sending.sendAgain,
  };
}
