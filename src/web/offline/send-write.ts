import type { MixView } from '../../sessions/mixes.views.js';
import type { WrittenSessionView } from '../../sessions/sessions.views.js';
import type { ScanView } from '../../sessions/tray.views.js';
import { startSetup } from '../today/sessions.requests.js';
import { press, scan } from '../tray/tray.requests.js';
import type { WaitingWrite } from './waiting-write.js';

export type WriteAnswer = ScanView | WrittenSessionView | { mix: MixView; warnings: string[] };

export function isScanAnswer(answer: WriteAnswer): answer is ScanView {
  return 'verdict' in answer;
}

/** @throws ServiceProblem */
export function sendWrite(write: WaitingWrite): Promise<WriteAnswer> {
  const { id, occurredAt, studioId, sessionId } = write;
  switch (write.kind) {
    case 'setup':
      return startSetup(studioId, sessionId, { id, occurredAt });
    case 'scan':
      return scan(studioId, sessionId, { ...write.shown, id, occurredAt });
    case 'mix press':
      return press(studioId, sessionId, write.press);
  }
}
