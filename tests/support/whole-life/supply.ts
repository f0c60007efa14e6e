import type { TrainingCourseView } from '../../../src/reorder/courses/training-courses.views.js';
import type {
  ArtistPlanningView,
  ItemPlanningView,
  PlanningSettingsView,
} from '../../../src/reorder/settings/planning-settings.views.js';
import type { OfferView } from '../../../src/reorder/supply/offers.views.js';
import type { SupplierTermsView } from '../../../src/reorder/supply/supplier-terms.views.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { LivedRegister } from './register.js';
import type { Texts } from './texts.js';

/** What can be ordered, by id. */
export interface LivedSupply {
  umberOfferId: string;
  linerOfferId: string;
}

const dayAhead = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

/** What a supplier offers and on what terms, courses, and how the studio plans. */
export async function liveSupply(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  register: LivedRegister,
): Promise<LivedSupply> {
  await setTerms(service, texts, register.supplierId);
  const offers = await offer(service, texts, register);
  await bookCourses(service, texts);
  await setPlanning(service, people, register);
  return offers;
}

async function setTerms(service: RecordingService, texts: Texts, supplierId: string): Promise<void> {
  const at = `/supplier-terms/${supplierId}`;
  const contact = { mailAddress: 'orders@supplier.example', customerNumber: texts('customer number') };
  const { version } = await service.changed<SupplierTermsView>('PUT', at, { orderWeekdays: [2], contact });
  await service.changed('PUT', at, {
    quotedLeadTimeDays: 5,
    orderWeekdays: [1, 4],
    minimumOrderMinor: 5_000,
    deliveryCostMinor: 690,
    freeDeliveryFromMinor: 20_000,
    version,
  });
  await service.seen(at);
}

async function offer(
  service: RecordingService,
  texts: Texts,
  { supplierId, umberId, linerId, gelId }: LivedRegister,
): Promise<LivedSupply> {
  const of = (productId: string, more: object = {}) =>
    service.made<OfferView>('/offers', {
      supplierId,
      productId,
      orderCode: texts('order code'),
      packContainers: 1,
      containerPieces: 1,
      minimumPacks: 1,
      prices: [{ fromPacks: 1, packPriceMinor: 2_400 }],
      currency: 'EUR',
      lifeOnArrivalDays: 540,
      leadTimeDays: 7,
      ...more,
    });
  const umber = await of(umberId);
  const liner = await of(linerId, { containerPieces: 20 });
  const unwanted = await of(gelId);
  await service.changed('PATCH', `/offers/${liner.id}`, {
    orderCode: texts('other order code'),
    packContainers: 2,
    containerPieces: 20,
    minimumPacks: 2,
    prices: [
      { fromPacks: 2, packPriceMinor: 3_000 },
      { fromPacks: 10, packPriceMinor: 2_700 },
    ],
    currency: 'EUR',
    lifeOnArrivalDays: null,
    leadTimeDays: null,
    version: liner.version,
  });
  await service.made(`/offers/${unwanted.id}/end`, { version: unwanted.version });
  return { umberOfferId: umber.id, linerOfferId: liner.id };
}

async function bookCourses(service: RecordingService, texts: Texts): Promise<void> {
  const [procedure] = await service.seen<{ id: string }[]>('/procedures');
  const book = () =>
    service.made<TrainingCourseView>('/training-courses', {
      procedureId: procedure?.id,
      heldOn: dayAhead(30),
      trainees: 6,
      reference: texts('course'),
    });
  const course = await book();
  const unwanted = await book();
  await service.changed('PATCH', `/training-courses/${course.id}`, {
    procedureId: procedure?.id,
    heldOn: dayAhead(40),
    trainees: 8,
    reference: texts('course renamed'),
    version: course.version,
  });
  await service.made(`/training-courses/${unwanted.id}/cancel`, { version: unwanted.version });
}

async function setPlanning(
  service: RecordingService,
  { artistId }: LivedPeople,
  { umberId, sandId, gelId, configuration }: LivedRegister,
): Promise<void> {
  const at = '/planning-settings';
  // Another life of the same studio may have set it already.
  const present = await service.seen<PlanningSettingsView>(at);
  const { version } = await service.changed<PlanningSettingsView>('PUT', at, {
    orderCostMinor: 800,
    ...(present.version !== null && { version: present.version }),
  });
  await service.changed('PUT', at, {
    serviceTargetPerMille: 970,
    orderCostMinor: 600,
    holdingPerYearPerMille: 120,
    returnPerMille: 650,
    version,
  });
  const item = (body: object) => service.changed<ItemPlanningView>('PUT', `${at}/items`, body);
  const product = (itemKey: string) => ({ itemKind: 'product', itemKey });
  const umber = await item({ ...product(umberId), rangeChoice: 'keep in stock' });
  await item({
    ...product(umberId),
    serviceTargetPerMille: 990,
    shortageCostMinor: 9_000,
    rangeChoice: 'keep in stock',
    replacesProductId: sandId,
    version: umber.version,
  });
  await item({ itemKind: 'configuration', itemKey: configuration, serviceTargetPerMille: 1000 });
  const gel = await item({ ...product(gelId), serviceTargetPerMille: 0 });
  await service.changed('DELETE', `${at}/items`, { ...product(gelId), version: gel.version });
  const artist = await service.changed<ArtistPlanningView>('PUT', `${at}/artists/${artistId}`, {
    leavesOn: dayAhead(100),
  });
  await service.changed('PUT', `${at}/artists/${artistId}`, { leavesOn: null, version: artist.version });
}
