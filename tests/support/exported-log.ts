import { v7 as uuidv7 } from 'uuid';
import type { RunningService } from './service.js';

/** Exports the studio's audit log, as a whole text. */
export async function exportLog(service: RunningService, id: string = uuidv7()): Promise<string> {
  const response = await service.fetch(`${service.studio}/audit-log/exports`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ id }),
  });
  const text = await response.text();
  if (!response.ok) throw new Error(`The export was answered ${response.status}: ${text}`);
  return text;
}
