/** An instant by the clocks of a place, wherever it is read: `25 Nov 2026, 14:05`. */
export function writtenAtStudio(instant: string, language: string, timeZone: string): string {
  return new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short', timeZone }).format(
    new Date(instant),
  );
}
