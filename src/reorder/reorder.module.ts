import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { SessionsModule } from '../sessions/sessions.module.js';
import { StockModule } from '../stock/stock.module.js';
import { SupplierClaim } from './claims/supplier-claim.entity.js';
import { TrainingCourse } from './courses/training-course.entity.js';
import { TrainingCoursesController } from './courses/training-courses.controller.js';
import { TrainingCourses } from './courses/training-courses.service.js';
import { Plan, PlanLine } from './plan/plan.entity.js';
import { PlanLevels } from './plan/plan-levels.service.js';
import { PlanLines } from './plan/plan-lines.service.js';
import { PlanProgress } from './plan/plan-progress.service.js';
import { PlanRequests } from './plan/plan-requests.service.js';
import { PlanRunner } from './plan/plan-runner.service.js';
import { PlansController } from './plan/plans.controller.js';
import { Plans } from './plan/plans.service.js';
import { PurchaseOrder, PurchaseOrderLine } from './purchase-orders/purchase-order.entity.js';
import { ArtistPlannings } from './settings/artist-plannings.service.js';
import { ItemPlannings } from './settings/item-plannings.service.js';
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
  ArtistPlannings,
];

/** What to order, how much and why: demand, supply, projection, plan, purchase orders and claims. */
@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule, StockModule, SessionsModule],
  controllers: [...supplyControllers, PlansController],
  providers: [...supplyProviders, Plans, PlanLines, PlanProgress, PlanRequests, PlanRunner, PlanLevels],
  exports: [Plans],
})
export class ReorderModule {}
