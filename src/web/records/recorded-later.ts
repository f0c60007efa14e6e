/** What is known of when the uses of a session were recorded; instants ISO 8601 in UTC with milliseconds. */
interface RecordedSession {
  recordedFrom: 'tray' | 'late' | 'paper';
  signedAt: string | null;
  uses: readonly { recordedAt: string }[];
}

/**
 * When the session itself was recorded: uses with a later instant were added afterwards. A session recorded afterwards
 * was signed off by that very record; one from the tray was recorded with the first of its uses.
 *
 * @returns null: nothing was recorded yet
 */
export function firstRecordedAt({ recordedFrom, signedAt, uses }: RecordedSession): string | null {
  if (recordedFrom !== 'tray') return signedAt;
  const [first] = uses.map((use) => use.recordedAt).sort();
  return first ?? null;
}
