import { parentPort } from 'node:worker_threads';
import { type Sheet, writeSpreadsheet } from './spreadsheet-file.js';

/** What the thread is told: the head of a sheet, then its rows in parts, then that it is whole. */
export type SheetPart = { head: Omit<Sheet, 'rows'> } | { rows: Sheet['rows'] } | 'whole';

/** Puts one sheet together in a thread of its own and hands back the file. */
const port = parentPort;
let head: Omit<Sheet, 'rows'> = { name: '', header: [] };
const rows: Sheet['rows'][number][] = [];
port?.on('message', async (part: SheetPart) => {
  if (part === 'whole') port.postMessage(await writeSpreadsheet({ ...head, rows }));
  else if ('head' in part) head = part.head;
  else rows.push(...part.rows);
});
