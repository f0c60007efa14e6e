import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { SessionsModule } from '../sessions/sessions.module.js';
import { StockModule } from '../stock/stock.module.js';
import { SupplierClaim } from './claims/supplier-claim.entity.js';
import { TrainingCourse } from './courses/training-course.entity.js';
import { Plan, PlanLine } from './plan/plan.entity.js';
import { PlanLevels } from './plan/plan-levels.service.js';
import { PlanLines } from './plan/plan-lines.service.js';
import { PlanProgress } from './plan/plan-progress.service.js';
import { PlanRequests } from './plan/plan-requests.service.js';
import { PlanRunner } from './plan/plan-runner.service.js';
import { PlansController } from './plan/plans.controller.js';
import { Plans } from './plan/plans.service.js';
import { PurchaseOrder, PurchaseOrderLine } from './purchase-orders/purchase-order.entity.js';
import { ArtistPlanning, ItemPlanning, PlanningSettings } from './settings/planning-settings.entity.js';
import { Offer } from './supply/offer.entity.js';
import { SupplierTerms } from './supply/supplier-terms.entity.js';

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

/** What to order, how much and why: demand, supply, projection, plan, purchase orders and claims. */
@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule, StockModule, SessionsModule],
  controllers: [PlansController],
  providers: [Plans, PlanLines, PlanProgress, PlanRequests, PlanRunner, PlanLevels],
  exports: [Plans],
})
export class ReorderModule {}
