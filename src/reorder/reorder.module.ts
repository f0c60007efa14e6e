import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { SessionsModule } from '../sessions/sessions.module.js';
import { StockModule } from '../stock/stock.module.js';
import { ClaimList } from './claims/claim-list.service.js';
import { ClaimSuggestions } from './claims/claim-suggestions.service.js';
import { ClaimsController } from './claims/claims.controller.js';
import { Claims } from './claims/claims.service.js';
import { SupplierClaim } from './claims/supplier-claim.entity.js';
import { TrainingCourse } from './courses/training-course.entity.js';
import { TrainingCoursesController } from './courses/training-courses.controller.js';
import { TrainingCourses } from './courses/training-courses.service.js';
import { NightlyPlans } from './plan/nightly-plans.service.js';
import { NoPlanConditions } from './plan/no-plan-conditions.service.js';
import { OldPlanLines } from './plan/old-plan-lines.service.js';
import { OrderCalendar } from './plan/order-calendar.service.js';
import { OrderDueConditions } from './plan/order-due-conditions.service.js';
import { Plan, PlanLine } from './plan/plan.entity.js';
import { PlanLeases } from './plan/plan-leases.service.js';
import { PlanLevels } from './plan/plan-levels.service.js';
import { PlanLineViews } from './plan/plan-line-views.service.js';
import { PlanLines } from './plan/plan-lines.service.js';
import { PlanProgress } from './plan/plan-progress.service.js';
import { PlanRequests } from './plan/plan-requests.service.js';
import { PlanRunner } from './plan/plan-runner.service.js';
import { PlansController } from './plan/plans.controller.js';
import { Plans } from './plan/plans.service.js';
import { OrderDrafting } from './purchase-orders/order-drafting.service.js';
import { OrderDrawing } from './purchase-orders/order-drawing.service.js';
import { OrderFactsReader } from './purchase-orders/order-facts.service.js';
import { OrderList } from './purchase-orders/order-list.service.js';
import { OrderMailStates } from './purchase-orders/order-mail-states.service.js';
import { OrderMails } from './purchase-orders/order-mails.service.js';
import { OrderNotSentConditions } from './purchase-orders/order-not-sent-conditions.service.js';
import { OrderPapers } from './purchase-orders/order-papers.service.js';
import { OrderPlacing } from './purchase-orders/order-placing.service.js';
import { OrderReceipts } from './purchase-orders/order-receipts.service.js';
import { OrderRegister } from './purchase-orders/order-register.service.js';
import { OrderViews } from './purchase-orders/order-views.service.js';
import {
  PurchaseOrder,
  PurchaseOrderLine,
  PurchaseOrderMail,
} from './purchase-orders/purchase-order.entity.js';
import { PurchaseOrdersController } from './purchase-orders/purchase-orders.controller.js';
import { ReplaysController } from './replay/replays.controller.js';
import { Replays } from './replay/replays.service.js';
import { ArtistPlannings } from './settings/artist-plannings.service.js';
import { ItemPlannings } from './settings/item-plannings.service.js';
import { KnownItems } from './settings/known-items.service.js';
import { PlanningSettingsController } from './settings/planning-settings.controller.js';
import { ArtistPlanning, ItemPlanning, PlanningSettings } from './settings/planning-settings.entity.js';
import { StudioPlanning } from './settings/studio-planning.service.js';
import { Offer } from './supply/offer.entity.js';
import { OffersController } from './supply/offers.controller.js';
import { Offers } from './supply/offers.service.js';
import { SupplierContacts } from './supply/supplier-contacts.service.js';
import { SupplierTermsController } from './supply/supplier-terms.controller.js';
import { SupplierTerms } from './supply/supplier-terms.entity.js';
import { SupplierTermsRegister } from './supply/supplier-terms.service.js';

export const reorderEntities = [
  SupplierTerms,
  Offer,
  TrainingCourse,
  PlanningSettings,
  ItemPlanning,
  ArtistPlanning,
  Plan,
  PlanLine,
  PurchaseOrder,
  PurchaseOrderLine,
  PurchaseOrderMail,
  SupplierClaim,
];

/** What suppliers offer, booked courses, and how the studio plans. */
const supplyControllers = [
  SupplierTermsController,
  OffersController,
  TrainingCoursesController,
  PlanningSettingsController,
];
const supplyProviders = [
  SupplierTermsRegister,
  SupplierContacts,
  Offers,
  TrainingCourses,
  StudioPlanning,
  ItemPlannings,
  KnownItems,
  ArtistPlannings,
];

const orderControllers = [PurchaseOrdersController, ClaimsController];
const orderProviders = [
  OrderDrafting,
  OrderDrawing,
  OrderFactsReader,
  OrderList,
  OrderMails,
  OrderMailStates,
  OrderNotSentConditions,
  OrderPapers,
  OrderPlacing,
  OrderReceipts,
  OrderRegister,
  OrderViews,
  Claims,
  ClaimList,
  ClaimSuggestions,
];

/** What to order, how much and why: demand, supply, projection, plan, purchase orders and claims. */
@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule, StockModule, SessionsModule],
  controllers: [...supplyControllers, ...orderControllers, ReplaysController, PlansController],
  providers: [
    ...supplyProviders,
    ...orderProviders,
    Plans,
    PlanLines,
    PlanLineViews,
    NightlyPlans,
    NoPlanConditions,
    OldPlanLines,
    OrderCalendar,
    OrderDueConditions,
    PlanLeases,
    PlanProgress,
    PlanRequests,
    PlanRunner,
    PlanLevels,
    Replays,
  ],
  exports: [Plans],
})
export class ReorderModule {}
