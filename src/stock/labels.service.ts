import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { labelElementString } from '../catalogue/own-label.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import type { ProductView } from '../catalogue/products.views.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import { invalidField, notFound } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import { LabelDrawing } from './label-drawing.service.js';
import { labelSheets } from './label-sheets.js';
import { type LabelFacts, labelContent, labelLines } from './label-text.js';
import type { PrintLabelsDto } from './labels.dto.js';

/** Labels for bottles and boxes that are in the studio. */
@Injectable()
export class Labels {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly containerFacts: ContainerFacts,
    private readonly register: ProductRegister,
    private readonly drawing: LabelDrawing,
  ) {}

  /** @returns a PDF */
  async print(actor: Actor, dto: PrintLabelsDto): Promise<Buffer> {
    const startAt = dto.startAt ?? 1;
    if (dto.sheet === 'roll' && startAt !== 1) {
      throw invalidField(
        'startAt',
        'A roll has one label a page, so it has no other start. Leave startAt out.',
      );
    }
    const containers = await this.containerFacts.load(this.database.read, actor.studioId, {
      containerIds: dto.containerIds,
    });
    const byId = new Map(containers.map((container) => [container.containerId, container]));
    const products = await this.register.views(this.database.reader.manager, actor.chainId, [
      ...new Set(containers.map((container) => container.productId)),
    ]);
    const productsById = new Map(products.map((product) => [product.id, product]));
    const { year } = Temporal.Instant.from(this.clock.now()).toZonedDateTimeISO(actor.timeZone);
    const labels = dto.containerIds.map((id) => {
      const container = byId.get(id);
      if (!container) throw notFound('bottle or box in stock', id);
      const facts = factsOf(container, productsById.get(container.productId));
      return {
        elements: labelElementString(labelContent(facts), year),
        lines: labelLines(facts, actor.timeZone),
      };
    });
    return this.drawing.draw(labels, labelSheets[dto.sheet], startAt);
  }
}

function factsOf(container: ContainerFact, product: ProductView | undefined): LabelFacts {
  const { form, labelCode, productName, code, codeState, useBy, openedAt } = container;
  const detail = container.shade ?? product?.notation ?? null;
  // A pack's number would be untrue on what came out of it.
  const unit = product?.gtins.find((gtin) => gtin.contentCount === 1);
  const gtin14 = unit?.gtin ?? null;
  return { form, labelCode, productName, detail, code, codeState, useBy, openedAt, gtin14 };
}
