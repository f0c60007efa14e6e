import { Injectable, type OnModuleInit } from '@nestjs/common';
import { CalendarEntries, type CalendarQuestion } from '../../alerts/calendar/calendar-entries.service.js';
import type { CalendarEntry } from '../../alerts/calendar/nearest-entries.js';
import type { Read } from '../../platform/database/database.js';
import { ordersAhead } from './order-due-conditions.service.js';

/** The days on which the latest plan has something ordered, by supplier. */
@Injectable()
export class OrderCalendar implements OnModuleInit {
  constructor(private readonly calendar: CalendarEntries) {}

  onModuleInit(): void {
    this.calendar.register({ name: 'plans', entries });
  }
}

async function entries(read: Read, { studioId }: CalendarQuestion): Promise<CalendarEntry[]> {
  const ahead = await ordersAhead(read, studioId);
  if (ahead.length === 0) return [];
  const [plan] = await read<{ askedAt: string; version: number }>(
    'SELECT asked_at AS "askedAt", version FROM plan WHERE studio_id = $1 AND id = $2',
    [studioId, ahead[0]?.planId ?? ''],
  );
  return ahead.map(({ supplierId, supplierName, on, lines }) => ({
    key: `order ${supplierId}`,
    firstDay: on,
    lastDay: on,
    title: `To order: ${supplierName}`,
    details: [`${lines} ${lines === 1 ? 'product' : 'products'} by the latest plan.`],
    page: '/ordering',
    recordedAt: plan?.askedAt ?? '',
    changes: Math.max(0, (plan?.version ?? 1) - 1),
  }));
}
