import { parentPort, workerData } from 'node:worker_threads';
import { type Sheet, writeSpreadsheet } from './spreadsheet-file.js';

/** Writes one sheet in a thread of its own and hands back the file. */
parentPort?.postMessage(await writeSpreadsheet(workerData as Sheet));
