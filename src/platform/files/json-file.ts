import type { FileFaultView } from './file-faults.views.js';

/** What a JSON text holds, or why it cannot be read. */
export type JsonFile = { value: unknown; faults: [] } | { value: null; faults: [FileFaultView] };

/** Reads JSON (RFC 8259), with or without a byte order mark. What it holds is not looked at. */
export function readJsonFile(text: string): JsonFile {
  const json = text.replace(/^\uFEFF/, '');
  const whole = (message: string, row: number | null = null): JsonFile => ({
    value: null,
    faults: [{ row, column: null, message }],
  });
  if (json.trim() === '') return whole('The file is empty. It needs a JSON text.');
  try {
    return { value: JSON.parse(json) as unknown, faults: [] };
  } catch (error) {
    const position = /position (\d+)/.exec(String(error))?.[1];
    if (position === undefined) return whole('The file is no JSON: it ends too early. Export it anew.');
    const before = json.slice(0, Number(position));
    const line = before.split('\n').length;
    const column = before.length - before.lastIndexOf('\n');
    return whole(`From line ${line}, character ${column} on, the file is no JSON. Export it anew.`, line);
  }
}
