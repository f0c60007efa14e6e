import type { MixView } from '../../sessions/mixes.views.js';
import type { WrittenSessionView } from '../../sessions/sessions.views.js';
import type { ScanView, TakenOffView } from '../../sessions/tray.views.js';
import type { ContainerChangeView } from '../../stock/container-operations.views.js';
import { startSetup } from '../today/sessions.requests.js';
import { openContainer, press, scan, takeOff } from '../tray/tray.requests.js';
import type { WaitingWrite } from './waiting-write.js';

export type WriteAnswer =
  | ScanView
  | WrittenSessionView
  | { mix: MixView; warnings: string[] }
  | TakenOffView
  | ContainerChangeView;

export function isScanAnswer(answer: WriteAnswer): answer is ScanView {
  return 'verdict' in answer;
}

/** No answer for so long is none: the same write is sent again. */
const limitMilliseconds = 10_000;

/** @throws ServiceProblem */
export function sendWrite(write: WaitingWrite): Promise<WriteAnswer> {
  const { id, occurredAt, studioId, sessionId, personId } = write;
  const sending = { personId, limitMilliseconds };
  switch (write.kind) {
    case 'setup':
      return startSetup(studioId, sessionId, { id, occurredAt }, sending);
    case 'scan':
      return scan(studioId, sessionId, { ...write.shown, id, occurredAt }, sending);
    case 'mix press':
      return press(studioId, sessionId, write.press, sending);
    case 'take off':
      return takeOff(studioId, sessionId, write.lineId, { id, occurredAt }, sending);
    case 'open':
      return openContainer(studioId, write.containerId, { id, occurredAt }, sending);
  }
}
