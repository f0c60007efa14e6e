import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SummaryLines } from '../alerts/summaries/summary-lines.service.js';

/** What stock has to say in the morning: what to take first, what to throw away, what to order. */
@Injectable()
export class StockSummaryLines implements OnModuleInit {
  constructor(private readonly lines: SummaryLines) {}

  onModuleInit(): void {
    const name = 'stock';
    // What is held need not be used in time: no alert of these kinds is open for it.
    const endingSoon = ['use-by near', 'opened life ending'];
    this.lines.register({ name, part: 'use first', kinds: endingSoon, dayFacts: ['lastDay'] });
    this.lines.register({ name, part: 'discard', kinds: ['expired on the shelf'], dayFacts: ['lastDay'] });
    this.lines.register({ name, part: 'order', kinds: ['low stock'] });
  }
}
