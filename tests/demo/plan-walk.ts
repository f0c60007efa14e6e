import { Temporal } from 'temporal-polyfill';
import type { PlanDetailView, PlanLinePageView, PlanLineView } from '../../src/reorder/plan/plans.views.js';
import type {
  DraftedOrdersView,
  PurchaseOrderView,
} from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import type { RunningService } from '../support/service.js';
import { until } from '../support/waiting.js';
import type { InventedStudio } from './invented-studio.js';
import type { Narrator } from './narrator.js';

interface Made {
  id: string;
}

const timeZone = 'Europe/Vienna';
/** So many weeks lie in the paper file; each has its first visits, and most of them a touch-up five weeks later. */
const weeks = 40;
const firstVisitsAWeek = 2;
const touchUpAfterDays = 36;

/**
 * Plays how an order comes about: ten months from paper, bookings, what the supplier offers, the plan with its reasons, and
 * the order drafted from it.
 */
export async function walkPlan(
  service: RunningService,
  studio: InventedStudio,
  narrator: Narrator,
): Promise<void> {
  narrator.step('Ten months from the paper file, and what is booked');
  const shades = await addShades(service, studio);
  const { sessions, owed } = await recordPast(service, studio, shades);
  const booked = await book(service, studio, shades);
  narrator.say(
    `${sessions} sessions from paper, ${owed} clients still owed a touch-up, ${booked} sessions booked.`,
  );

  narrator.step('What the supplier offers, and on what terms');
  await offer(service, studio, shades);
  narrator.say(
    'Fennel & Rook: four days as they say, orders from Monday to Friday, delivery 6.90, free from 150.00.',
  );

  narrator.step('The plan: what to order, how much and why');
  const { id } = await service.made<Made>('/plans', { purpose: 'plan' });
  const plan = await until('the plan', async () => {
    const seen = await service.seen<PlanDetailView>(`/plans/${id}`);
    return seen.state === 'waiting' || seen.state === 'running' ? undefined : seen;
  });
  narrator.expect(
    plan.state === 'done',
    `the plan is ${plan.state}${plan.failure ? `: ${plan.failure}` : ''}`,
  );
  const { items: lines } = await service.seen<PlanLinePageView>(`/plans/${id}/lines?limit=200`);
  for (const line of lines)
    narrator.say(`${line.decision.toUpperCase()}  ${line.item.label}: ${line.sentence}`);
  const whole = async (productId: string) => {
    const line = lines.find(({ item }) => item.productIds.includes(productId));
    if (!line) throw new Error(`The plan has no line for product ${productId}.`);
    return service.seen<PlanLineView>(`/plans/${id}/lines/${line.lineNumber}`);
  };
  const liner = await whole(studio.liner);
  const rosewood = await whole(shades.rosewood);
  const slate = await whole(shades.slate);
  for (const { item, reasons } of [liner, rosewood, slate]) {
    narrator.say(`${item.label}:`);
    for (const { message } of reasons) narrator.say(`  ${message}`);
  }
  narrator.expect(
    liner.decision === 'order now' && liner.packs > 0,
    `the liner, needed in every session, is ordered now: ${liner.packs} boxes of 20`,
  );
  narrator.expect(
    rosewood.range?.choice === 'order for the appointment' ||
      rosewood.decision === 'order for the appointment',
    'rosewood is ordered only when somebody is booked for it: a bottle on the shelf would expire',
  );
  narrator.expect(
    slate.decision !== 'order now' && slate.without.expectedWasteMinor > 0,
    `smoked slate is not ordered now: of what is here, ${(slate.without.expectedWasteMinor / 100).toFixed(2)} will expire`,
  );
  narrator.say('Assumptions of the plan:');
  for (const { message, items } of plan.assumptions) {
    narrator.say(`  ${message}${items === null ? '' : ` (${items} ${items === 1 ? 'item' : 'items'})`}`);
  }

  narrator.step('The order is drafted from the plan, approved, and sent');
  const due = plan.baskets
    .filter(({ on }) => on <= day(0))
    .flatMap((basket) => basket.lines.map(({ lineNumber }) => lineNumber));
  const drafted = await service.made<DraftedOrdersView>('/purchase-orders/from-plan', {
    planId: id,
    lineNumbers: due,
  });
  const draft = drafted.orders[0];
  if (!draft) throw new Error('No order was drafted.');
  const approved = await service.made<PurchaseOrderView>(`/purchase-orders/${draft.id}/approval`, {
    version: draft.version,
  });
  const sent = await service.made<PurchaseOrderView>(`/purchase-orders/${draft.id}/sending`, {
    version: approved.version,
    as: 'by hand',
  });
  narrator.expect(
    sent.state === 'sent',
    `order ${sent.number} is sent, and expected on ${sent.expected?.expectedOn}`,
  );
  const csv = await service.get<string>(`/purchase-orders/${draft.id}/order.csv`);
  for (const line of csv.body.trim().split('\n')) narrator.say(`| ${line.trim()}`);
}

interface Shades {
  lips: string;
  rosewood: string;
  slate: string;
  needle: string;
}

async function addShades(service: RunningService, studio: InventedStudio): Promise<Shades> {
  const add = async (path: string, body: object) => (await service.made<Made>(path, body)).id;
  const makers = await service.seen<(Made & { name: string })[]>('/makers');
  const maker = (name: string) => makers.find((each) => each.name === name)?.id;
  const pigment = (name: string, shade: string, openedLife: string) =>
    add('/products', {
      kind: 'pigment',
      makerId: maker('Halden Colour Works'),
      name,
      shade,
      pigmentRole: 'colour',
      volumeMicrolitres: 10_000,
      openedLife,
      dropMicrolitres: 40,
    });
  const rosewood = await pigment('Lip pigment', 'Rosewood', 'P3M');
  const slate = await pigment('Brow pigment', 'Smoked slate', 'P12M');
  const needle = await add('/products', {
    kind: 'cartridge',
    makerId: maker('Corvin Needleworks'),
    name: 'Lip round',
    notation: '1005RL',
    machineFit: 'common bayonet',
    membrane: 'yes',
  });
  const lips = await add('/procedures', { name: 'Lips', bodyPlace: 'lips' });
  const kit = await service.put(`/procedures/${lips}/kit-list`, {
    items: [{ productId: needle, quantity: 1 }],
  });
  if (kit.status >= 300) throw new Error(`The kit list was refused: ${JSON.stringify(kit.body)}`);
  await service.made('/deliveries', {
    origin: 'opening stock',
    lines: [
      {
        productId: slate,
        codes: [{ kind: 'lot', code: 'HS-12' }],
        useBy: day(75),
        quantity: 2,
        unitCostMinor: 2_490,
        placeId: studio.placeId,
      },
      {
        productId: needle,
        codes: [{ kind: 'lot', code: 'CR-3' }],
        useBy: day(500),
        quantity: 30,
        placeId: studio.placeId,
      },
    ],
  });
  return { lips, rosewood, slate, needle };
}

/** What the paper file has: brows each week, lips and a rare shade now and then. */
async function recordPast(
  service: RunningService,
  studio: InventedStudio,
  shades: Shades,
): Promise<{ sessions: number; owed: number }> {
  let sessions = 0;
  let owed = 0;
  const record = async (daysAgo: number, body: object, uses: object[]) => {
    sessions += 1;
    return service.made<Made>('/sessions/late', {
      source: 'paper',
      occurredAt: at(-daysAgo, 10 + (sessions % 6)),
      artistId: studio.artistId,
      signedBy: studio.artistId,
      complications: null,
      uses,
      ...body,
    });
  };
  const brow = (productId: string, code: string, microlitres: number) => [
    used(studio.liner, 'CL-1980', { pieces: 1 + (sessions % 3 === 0 ? 1 : 0) }),
    used(studio.magnum, 'CM-5', { pieces: 1 }),
    used(productId, code, { microlitres }),
  ];
  for (let week = weeks; week >= 1; week--) {
    for (let visit = 0; visit < firstVisitsAWeek; visit++) {
      const daysAgo = week * 7 - visit * 2;
      const number = (weeks - week) * firstVisitsAWeek + visit;
      const rare = number % 27 === 5;
      const shade = rare
        ? brow(shades.slate, 'HS-4', 240)
        : brow(studio.umber, 'HU-070', 200 + (number % 5) * 20);
      const client = await service.made<Made>('/clients', { name: `From paper ${number + 1}` });
      const first = await record(
        daysAgo,
        {
          clientId: client.id,
          procedureId: studio.brows,
          visitKind: 'first session',
          bookedAt: at(-daysAgo - 14 - (number % 20), 9),
        },
        shade,
      );
      // Four of five come back.
      const backOn = daysAgo - touchUpAfterDays - (number % 7);
      if (number % 5 === 4) continue;
      if (backOn < 1) {
        owed += 1;
        continue;
      }
      await record(
        backOn,
        {
          clientId: client.id,
          procedureId: studio.brows,
          visitKind: 'touch-up',
          followsSessionId: first.id,
          bookedAt: at(-backOn - 20, 9),
        },
        shade,
      );
    }
    // Lips are rare, and booked long before.
    if (week % 8 === 3) {
      const client = await service.made<Made>('/clients', { name: `Lips from paper ${week}` });
      await record(
        week * 7 - 5,
        {
          clientId: client.id,
          procedureId: shades.lips,
          visitKind: 'refresh',
          bookedAt: at(-week * 7 - 25, 9),
        },
        [used(shades.needle, 'CR-1', { pieces: 1 }), used(shades.rosewood, 'HR-2', { microlitres: 320 })],
      );
    }
  }
  return { sessions, owed };
}

async function book(service: RunningService, studio: InventedStudio, shades: Shades): Promise<number> {
  const days = [2, 3, 5, 8, 9, 12, 16, 19];
  for (const [index, ahead] of days.entries()) {
    const client = await service.made<Made>('/clients', { name: `Booked ${index + 1}` });
    await service.made('/sessions', {
      clientId: client.id,
      artistId: studio.artistId,
      procedureId: studio.brows,
      visitKind: 'first session',
      bookedAt: at(-10 - index, 9),
      plannedStart: at(ahead, 10),
    });
  }
  const client = await service.made<Made>('/clients', { name: 'Booked for lips' });
  await service.made('/sessions', {
    clientId: client.id,
    artistId: studio.artistId,
    procedureId: shades.lips,
    visitKind: 'refresh',
    bookedAt: at(-3, 9),
    plannedStart: at(26, 11),
  });
  return days.length + 1;
}

async function offer(service: RunningService, studio: InventedStudio, shades: Shades): Promise<void> {
  const terms = await service.put(`/supplier-terms/${studio.supplierId}`, {
    quotedLeadTimeDays: 4,
    orderWeekdays: [1, 2, 3, 4, 5],
    deliveryCostMinor: 690,
    freeDeliveryFromMinor: 15_000,
  });
  if (terms.status >= 300) throw new Error(`The terms were refused: ${JSON.stringify(terms.body)}`);
  const bottle = (productId: string, orderCode: string, packPriceMinor: number, lifeOnArrivalDays = 700) =>
    service.made('/offers', {
      supplierId: studio.supplierId,
      productId,
      orderCode,
      packContainers: 1,
      containerPieces: 1,
      minimumPacks: 1,
      prices: [{ fromPacks: 1, packPriceMinor }],
      lifeOnArrivalDays,
    });
  const box = (productId: string, orderCode: string, prices: object[]) =>
    service.made('/offers', {
      supplierId: studio.supplierId,
      productId,
      orderCode,
      packContainers: 1,
      containerPieces: 20,
      minimumPacks: 1,
      prices,
      lifeOnArrivalDays: 1_000,
    });
  await box(studio.liner, 'FR-100', [
    { fromPacks: 1, packPriceMinor: 1_900 },
    { fromPacks: 5, packPriceMinor: 1_700 },
  ]);
  await box(studio.magnum, 'FR-110', [{ fromPacks: 1, packPriceMinor: 2_100 }]);
  await box(shades.needle, 'FR-120', [{ fromPacks: 1, packPriceMinor: 2_000 }]);
  await bottle(studio.umber, 'FR-200', 2_490);
  await bottle(shades.slate, 'FR-210', 2_490);
  // It keeps for a short time only: on the shelf it would often expire before somebody comes.
  await bottle(shades.rosewood, 'FR-220', 3_900, 120);
}

/** As the paper says it: a lot that is not on record yet is made. */
function used(productId: string, code: string, amount: object): object {
  return { productId, code, useBy: null, knownBy: 'typed', ...amount };
}

/** An instant so many days from now, at an hour of the studio's clock. */
function at(days: number, hour: number): string {
  return Temporal.Now.plainDateISO(timeZone)
    .add({ days })
    .toZonedDateTime({ timeZone, plainTime: Temporal.PlainTime.from({ hour }) })
    .toInstant()
    .toString();
}

const day = (days: number) => Temporal.Now.plainDateISO(timeZone).add({ days }).toString();
