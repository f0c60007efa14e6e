/** An instant by the clocks of a place, wherever it is read: `25 Nov 2026, 14:05`. */
export function writtenInstant(instant: string, language: string, timeZone: string): string {
  return new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short', timeZone }).format(
    new Date(instant),
  );
}

/** An instant by the clock of whoever reads it, for what belongs to no studio. */
export function writtenInstantHere(instant: string, language: string): string {
  return writtenInstant(instant, language, Intl.DateTimeFormat().resolvedOptions().timeZone);
}

/** The time of day of an instant, by the clock of a place: `14:05`. */
export function writtenTime(instant: string, language: string, timeZone: string): string {
  return new Intl.DateTimeFormat(language, { timeStyle: 'short', timeZone }).format(new Date(instant));
}

/** A plain date, `2026-11-25`, the same everywhere: `25 Nov 2026`. */
export function writtenDay(day: string, language: string): string {
  return new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  );
}
