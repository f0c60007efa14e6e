import { Temporal } from 'temporal-polyfill';
import type { Read } from '../../platform/database/database.js';
import { grouped } from '../../platform/grouped.js';
import { lastUsableDay } from '../../stock/opened-life.js';
import { containerLife } from '../../stock/stock-on-hand.js';
import { dayNumber, localDayNumbers } from '../plan/local-day-numbers.js';
import type { ItemAbout, PlanFacts } from '../plan/plan-facts.query.js';
import { studioRow } from '../plan/plan-rows.query.js';
import type { PlanTask } from '../plan/plan-task.interface.js';
import { itemName } from '../plan/planned-items.js';
import { type Batch, NEVER } from '../projection/item-facts.js';
import {
  levelsByHandRows,
  type ReceivedRow,
  receivedRows,
  type StockThenRow,
  stockThenRows,
} from './replay-rows.query.js';

/** What came, as the record has it. `orderedOn` null: it was bought, and nobody wrote down when it was ordered. */
export interface Received {
  orderId: string;
  bought: boolean;
  orderedOn: number | null;
  day: number;
  batch: Batch;
}

/** What a replay knows of an item beside what its plan knows. */
export interface ItemRecord {
  /** On the morning of the first day; days count from the day of the plan. */
  stock: Batch[];
  received: Received[];
  /** In units; null: nobody set one. */
  minimumUnits: number | null;
}

/** Reads what stood on the shelf on a morning of the past, and what came since, by item. */
export async function loadItemRecords(
  read: Read,
  task: PlanTask,
  facts: PlanFacts,
  firstDay: number,
): Promise<Map<string, ItemRecord>> {
  const { studioId, timeZone } = task.studio;
  const { plannedOn } = task.plan;
  const dayOf = localDayNumbers(timeZone, plannedOn);
  const morning = Temporal.PlainDate.from(plannedOn).add({ days: firstDay }).toZonedDateTime(timeZone);
  // As instants are written in the record.
  const instant = new Date(morning.epochMilliseconds).toISOString();
  const { assumedOpenedLife } = await studioRow(read, studioId);
  const stock = grouped(await stockThenRows(read, studioId, instant), ({ productId }) => productId);
  const received = grouped(
    await receivedRows(read, studioId, instant, facts.currency),
    ({ productId }) => productId,
  );
  const levels = new Map(
    (await levelsByHandRows(read, studioId)).map((row) => [
      `${row.subjectKind} ${row.subjectId}`,
      row.minimumPieces,
    ]),
  );
  const records = new Map<string, ItemRecord>();
  for (const about of facts.about.values()) {
    const { products } = about.item;
    const pieces = levels.get(itemName(about.item));
    const [first] = products;
    records.set(itemName(about.item), {
      stock: products.flatMap(({ productId, openedLife }) =>
        (stock.get(productId) ?? []).flatMap((row) =>
          batchThen(row, about, { openedLife, assumedOpenedLife, instant, firstDay, plannedOn, timeZone }),
        ),
      ),
      received: products.flatMap(({ productId, volumeMicrolitres }) =>
        (received.get(productId) ?? []).map((row) =>
          arrivalOf(row, unitsOfPiece(about, volumeMicrolitres), dayOf, plannedOn),
        ),
      ),
      minimumUnits:
        pieces === undefined ? null : pieces * unitsOfPiece(about, first?.volumeMicrolitres ?? null),
    });
  }
  return records;
}

function batchThen(
  row: StockThenRow,
  { item: { unit } }: ItemAbout,
  then: {
    openedLife: string | null;
    assumedOpenedLife: string | null;
    instant: string;
    firstDay: number;
    plannedOn: string;
    timeZone: string;
  },
): Batch[] {
  const opened = row.openedAt !== null && row.openedAt < then.instant;
  const life = containerLife(
    {
      form: row.form,
      useBy: row.useBy,
      openedAt: opened ? row.openedAt : null,
      openedLife: then.openedLife,
      usableThrough: opened ? row.usableThrough : null,
    },
    then.assumedOpenedLife,
  );
  const { lastDay } = lastUsableDay({ ...life, timeZone: then.timeZone });
  const last = lastDay === null ? NEVER : dayNumber(lastDay, then.plannedOn);
  const unitsEach = unit === 'pieces' ? 1 : row.microlitres;
  if (last < then.firstDay || unitsEach <= 0) return [];
  return [
    {
      containers: unit === 'pieces' ? row.pieces : 1,
      unitsEach,
      lastDay: last,
      opened: opened && unit === 'microlitres',
      costEachMinor: null,
    },
  ];
}

function arrivalOf(
  row: ReceivedRow,
  unitsEach: number,
  dayOf: (instant: string) => number,
  plannedOn: string,
): Received {
  const day = dayOf(row.occurredAt);
  const ordered = row.sentAt !== null ? dayOf(row.sentAt) : row.orderedOn;
  const orderedOn = typeof ordered === 'string' ? dayNumber(ordered, plannedOn) : ordered;
  return {
    orderId: row.purchaseOrderId ?? row.deliveryId,
    bought: row.origin === 'purchase',
    orderedOn: orderedOn === null ? null : Math.min(orderedOn, day),
    day,
    batch: {
      containers: row.pieces,
      unitsEach,
      lastDay: row.useBy === null ? NEVER : dayNumber(row.useBy, plannedOn),
      opened: false,
      costEachMinor: row.unitCostMinor,
    },
  };
}

function unitsOfPiece({ item: { unit } }: ItemAbout, volumeMicrolitres: number | null): number {
  return unit === 'pieces' ? 1 : (volumeMicrolitres ?? 1);
}
