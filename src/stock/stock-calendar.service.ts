import { Injectable, type OnModuleInit } from '@nestjs/common';
import { CalendarEntries, type CalendarQuestion } from '../alerts/calendar/calendar-entries.service.js';
import type { CalendarEntry } from '../alerts/calendar/nearest-entries.js';
import { productLabel } from '../catalogue/product-label.js';
import type { Read } from '../platform/database/database.js';
import type { StockOnHand } from './alert-conditions.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import { assumedOpenedLife } from './container-views.service.js';
import { type NamedPlace, namedPlaces } from './named-places.query.js';
import { type LastUsableDay, lastUsableDay } from './opened-life.js';
import { stockOnHand } from './stock-on-hand.js';

const mostPlaces = 5;

/** The last day of all that is here: of sealed lots their use-by, of opened containers the end of their life. */
@Injectable()
export class StockCalendar implements OnModuleInit {
  constructor(
    private readonly calendar: CalendarEntries,
    private readonly containerFacts: ContainerFacts,
  ) {}

  onModuleInit(): void {
    this.calendar.register({ name: 'stock', entries: (read, question) => this.entries(read, question) });
  }

  private async entries(
    read: Read,
    { studioId, timeZone, from }: CalendarQuestion,
  ): Promise<CalendarEntry[]> {
    const containers = await this.containerFacts.load(read, studioId, { all: true });
    const assumed = await assumedOpenedLife(read, studioId);
    const places = await namedPlaces(read, studioId);
    const things = new Map<string, ContainerFact[]>();
    for (const container of containers) {
      things.set(container.containerId, [container]);
      const ofLot = things.get(container.lotId);
      if (ofLot) ofLot.push(container);
      else things.set(container.lotId, [container]);
    }
    return stockOnHand(containers, assumed).flatMap((item) => {
      const last = lastUsableDay({ ...item, timeZone });
      const those = things.get(item.subjectId) ?? [];
      if (item.practice || last.lastDay === null || last.lastDay < from) return [];
      return [entryOf(item, last, last.lastDay, those, places)];
    });
  }
}

function entryOf(
  item: StockOnHand,
  { boundBy }: LastUsableDay,
  lastDay: string,
  those: readonly ContainerFact[],
  places: ReadonlyMap<string, NamedPlace>,
): CalendarEntry {
  const { subjectKind, subjectId, openedAt, pieces, held } = item;
  const [thing] = those;
  if (!thing) throw new Error(`The ${subjectKind} ${subjectId} was counted but not loaded.`);
  const end = boundBy === 'opened life' ? 'Opened life ends' : 'Use by';
  const lot = thing.code === null ? '' : `, lot ${thing.code}`;
  const named = [...new Set(those.map(({ placeId }) => places.get(placeId)?.name ?? ''))].sort();
  return {
    key: `${openedAt === null ? 'use-by' : 'opened-life'} ${subjectId}`,
    firstDay: lastDay,
    lastDay,
    title: `${end}: ${productLabel(thing)}${lot}${held ? ' (on hold)' : ''}`,
    details: [
      `It may be used through the end of this day.`,
      subjectKind === 'lot' ? `Pieces: ${pieces}` : `Label: ${thing.labelCode}`,
      `Place: ${named.slice(0, mostPlaces).join(', ')}`,
      ...(held ? ['It is on hold: nobody may use it before the hold is released.'] : []),
    ],
    page: `/stock/${subjectKind === 'lot' ? 'lots' : 'containers'}/${subjectId}`,
    recordedAt: openedAt ?? earliest(those.map(({ receivedAt }) => receivedAt)),
    changes: subjectKind === 'lot' ? 0 : thing.version - 1,
  };
}

function earliest(instants: readonly string[]): string {
  return [...instants].sort()[0] ?? '';
}
