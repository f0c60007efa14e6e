import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import { readSymbol } from './barcode.js';
import { ProductRegister } from './product-register.service.js';
import { symbolUseBy } from './symbol-use-by.js';
import type { ReadSymbolDto } from './symbols.dto.js';
import type { SymbolView } from './symbols.views.js';

/** Reads symbols and finds the product they name. */
@Injectable()
export class Symbols {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly register: ProductRegister,
  ) {}

  async read(actor: Actor, dto: ReadSymbolDto): Promise<SymbolView> {
    const now = Temporal.Instant.from(this.clock.now());
    const reading = readSymbol(dto, now.toZonedDateTimeISO(actor.timeZone).toPlainDate().toString());
    const facts = reading.kind === 'gs1' || reading.kind === 'own label' ? reading : undefined;
    const useBy = facts ? symbolUseBy(facts) : null;
    const gtin = reading.kind === 'product only' ? reading.gtin14 : (facts?.gtin14 ?? null);
    const faults =
      reading.kind === 'invalid' ? reading.errors : reading.kind === 'plain text' ? reading.doubts : [];
    const { manager } = this.database.reader;
    const traded =
      gtin === null ? undefined : (await this.register.gtins(manager, actor.chainId, [gtin])).get(gtin);
    const [product] = traded ? await this.register.views(manager, actor.chainId, [traded.productId]) : [];
    return {
      kind: reading.kind,
      text: reading.text,
      symbologyIdentifier: reading.symbologyIdentifier ?? null,
      labelCode: reading.kind === 'own label' ? reading.code : null,
      gtin,
      lotCode: facts?.lotCode ?? null,
      serial: facts?.serial ?? null,
      useBy: useBy?.date ?? null,
      useByPrecision: useBy?.precision ?? null,
      producedOn: facts?.producedOn?.date ?? null,
      elements: 'elements' in reading ? reading.elements.map((element) => ({ ...element })) : [],
      faults: faults.map((fault) => ({
        ...fault,
        applicationIdentifier: fault.applicationIdentifier ?? null,
      })),
      product: product ?? null,
      contentCount: traded?.contentCount ?? null,
    };
  }
}
