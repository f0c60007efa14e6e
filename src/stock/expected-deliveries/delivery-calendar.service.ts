import { Injectable, type OnModuleInit } from '@nestjs/common';
import { CalendarEntries, type CalendarQuestion } from '../../alerts/calendar/calendar-entries.service.js';
import type { CalendarEntry } from '../../alerts/calendar/nearest-entries.js';
import type { Read } from '../../platform/database/database.js';

const mostDeliveries = 1_000;

interface DeliveryRow {
  id: string;
  supplierName: string;
  reference: string | null;
  orderedOn: string | null;
  expectedOn: string;
  version: number;
  createdAt: string;
}

/** The days on which deliveries are expected. */
@Injectable()
export class DeliveryCalendar implements OnModuleInit {
  constructor(private readonly calendar: CalendarEntries) {}

  onModuleInit(): void {
    this.calendar.register({ name: 'expected deliveries', entries });
  }
}

async function entries(read: Read, { studioId, from }: CalendarQuestion): Promise<CalendarEntry[]> {
  const rows = await read<DeliveryRow>(
    `SELECT expected_delivery.id, supplier.name AS "supplierName", expected_delivery.reference,
       expected_delivery.ordered_on AS "orderedOn", expected_delivery.expected_on AS "expectedOn",
       expected_delivery.version, expected_delivery.created_at AS "createdAt"
     FROM expected_delivery JOIN supplier
       ON supplier.chain_id = expected_delivery.chain_id AND supplier.id = expected_delivery.supplier_id
     WHERE expected_delivery.studio_id = $1 AND expected_delivery.expected_on >= $2
       AND expected_delivery.ended_at IS NULL
     ORDER BY expected_delivery.expected_on, expected_delivery.id LIMIT ${mostDeliveries}`,
    [studioId, from],
  );
  return rows.map(({ id, supplierName, reference, orderedOn, expectedOn, version, createdAt }) => ({
    key: `delivery ${id}`,
    firstDay: expectedOn,
    lastDay: expectedOn,
    title: `Delivery expected: ${supplierName}`,
    details: [
      ...(reference === null ? [] : [`Number: ${reference}`]),
      ...(orderedOn === null ? [] : [`Ordered on ${orderedOn}`]),
    ],
    page: '/stock',
    recordedAt: createdAt,
    changes: version - 1,
  }));
}
