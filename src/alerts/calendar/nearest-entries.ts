/** Something that stands in the calendar on one or more local days; never a client. */
export interface CalendarEntry {
  /** Stands for this entry as long as it is there, such as `use-by 0198…`. */
  key: string;
  /** First and last local day, ISO `YYYY-MM-DD`; both belong to it. */
  firstDay: string;
  lastDay: string;
  title: string;
  details: string[];
  /** The page of the app below the studio: `/stock/lots/0198…`. */
  page: string;
  /** When what it is about came into the record, ISO 8601 instant. */
  recordedAt: string;
  /** How often it was changed since, from 0. */
  changes: number;
}

/** What a calendar shows of all that a room knows. */
export interface ChosenEntries {
  entries: CalendarEntry[];
  /** How many were left out. */
  more: number;
}

export const mostEntries = 500;

/**
 * The entries nearest to a day, in the order in which they begin: what runs or comes soon before what comes later, and
 * that before what is over.
 *
 * @param today the studio's local day
 */
export function nearestEntries(
  entries: readonly CalendarEntry[],
  today: string,
  most: number = mostEntries,
): ChosenEntries {
  const isOver = ({ lastDay }: CalendarEntry) => lastDay < today;
  const coming = entries.filter((entry) => !isOver(entry)).sort(byBeginning);
  // Of what is over, what ended last is nearest.
  const over = entries.filter(isOver).sort((one, other) => byText(other.lastDay, one.lastDay));
  const chosen = [...coming, ...over].slice(0, most).sort(byBeginning);
  return { entries: chosen, more: entries.length - chosen.length };
}

function byBeginning(one: CalendarEntry, other: CalendarEntry): number {
  return byText(one.firstDay, other.firstDay) || byText(one.key, other.key);
}

function byText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
