import { Body, Controller, Get, Param, Patch, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { OrderDrafting } from './order-drafting.service.js';
import { OrderList } from './order-list.service.js';
import { OrderPapers } from './order-papers.service.js';
import { OrderPlacing } from './order-placing.service.js';
import {
  ApproveOrderDto,
  ChangeOrderDto,
  DraftFromPlanDto,
  DraftOrderDto,
  OrderStepDto,
  PurchaseOrderPageDto,
  SendOrderDto,
} from './purchase-orders.dto.js';
import { DraftedOrdersView, PurchaseOrderPageView, PurchaseOrderView } from './purchase-orders.views.js';

@ApiTags('ordering')
@Controller('v1/studios/:studioId/purchase-orders')
export class PurchaseOrdersController {
  constructor(
    private readonly orders: OrderList,
    private readonly drafting: OrderDrafting,
    private readonly placing: OrderPlacing,
    private readonly papers: OrderPapers,
  ) {}

  /** A page of orders, the highest number first. */
  @Needs('read plans')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: PurchaseOrderPageDto): Promise<PurchaseOrderPageView> {
    return this.orders.list(actor, page);
  }

  /** One order with its lines, and what came of them. */
  @Needs('read plans')
  @Get(':orderId')
  show(@CurrentActor() actor: Actor, @Param('orderId', IdPipe) id: string): Promise<PurchaseOrderView> {
    return this.orders.show(actor, id);
  }

  /** Drafts what a plan says of the chosen lines, one order for each supplier. */
  @Needs('plan orders')
  @Post('from-plan')
  draftFromPlan(@CurrentActor() actor: Actor, @Body() dto: DraftFromPlanDto): Promise<DraftedOrdersView> {
    return this.drafting.fromPlan(actor, dto);
  }

  /** Drafts an order by hand. */
  @Needs('plan orders')
  @Post()
  draft(@CurrentActor() actor: Actor, @Body() dto: DraftOrderDto): Promise<PurchaseOrderView> {
    return this.drafting.draft(actor, dto);
  }

  /** Changes a draft: packs, prices, lines added and taken off, the cost of delivery. */
  @Needs('plan orders')
  @Patch(':orderId')
  change(
    @CurrentActor() actor: Actor,
    @Param('orderId', IdPipe) id: string,
    @Body() dto: ChangeOrderDto,
  ): Promise<PurchaseOrderView> {
    return this.drafting.change(actor, id, dto);
  }

  /** Approves a draft; it changes no more. Warnings that were not confirmed come back with 409 decision-needed. */
  @Needs('place orders')
  @Post(':orderId/approval')
  approve(
    @CurrentActor() actor: Actor,
    @Param('orderId', IdPipe) id: string,
    @Body() dto: ApproveOrderDto,
  ): Promise<PurchaseOrderView> {
    return this.placing.approve(actor, id, dto);
  }

  /** Makes an approved order that was not sent yet a draft again. */
  @Needs('place orders')
  @Post(':orderId/draft-again')
  draftAgain(
    @CurrentActor() actor: Actor,
    @Param('orderId', IdPipe) id: string,
    @Body() dto: OrderStepDto,
  ): Promise<PurchaseOrderView> {
    return this.placing.draftAgain(actor, id, dto);
  }

  /**
   * Sends an approved order. By mail it is sent once the mail server took it, which is tried until it does or is given up;
   * until then it stays approved, and its mail says how it stands. By hand it is sent now.
   */
  @Needs('place orders')
  @Post(':orderId/sending')
  send(
    @CurrentActor() actor: Actor,
    @Param('orderId', IdPipe) id: string,
    @Body() dto: SendOrderDto,
  ): Promise<PurchaseOrderView> {
    return this.placing.send(actor, id, dto);
  }

  /** Calls off all of an order, or what has not come of it. */
  @Needs('place orders')
  @Post(':orderId/call-off')
  callOff(
    @CurrentActor() actor: Actor,
    @Param('orderId', IdPipe) id: string,
    @Body() dto: OrderStepDto,
  ): Promise<PurchaseOrderView> {
    return this.placing.end(actor, id, 'call off', dto);
  }

  /** Closes an order with what is missing: nothing more is expected, and the supplier owes it. */
  @Needs('place orders')
  @Post(':orderId/closing')
  close(
    @CurrentActor() actor: Actor,
    @Param('orderId', IdPipe) id: string,
    @Body() dto: OrderStepDto,
  ): Promise<PurchaseOrderView> {
    return this.placing.end(actor, id, 'close', dto);
  }

  /** The order as a document for the supplier, A4. */
  @Needs('place orders')
  @Get(':orderId/order.pdf')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } } })
  async pdf(@CurrentActor() actor: Actor, @Param('orderId', IdPipe) id: string): Promise<StreamableFile> {
    const { name, content } = await this.papers.pdf(actor, id);
    return new StreamableFile(content, {
      type: 'application/pdf',
      disposition: `attachment; filename="${name}"`,
    });
  }

  /** The lines of the order for a supplier's program or a spreadsheet. */
  @Needs('place orders')
  @Get(':orderId/order.csv')
  @ApiProduces('text/csv')
  @ApiOkResponse({ content: { 'text/csv': { schema: { type: 'string' } } } })
  async csv(@CurrentActor() actor: Actor, @Param('orderId', IdPipe) id: string): Promise<StreamableFile> {
    const { name, content } = await this.papers.csv(actor, id);
    return new StreamableFile(content, {
      type: 'text/csv; charset=utf-8; header=present',
      disposition: `attachment; filename="${name}"`,
    });
  }
}
