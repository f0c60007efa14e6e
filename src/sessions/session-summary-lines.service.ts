import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SummaryLines } from '../alerts/summaries/summary-lines.service.js';

/** What sessions have to say in the morning: visits that cannot be prepared as they should be. */
@Injectable()
export class SessionSummaryLines implements OnModuleInit {
  constructor(private readonly lines: SummaryLines) {}

  onModuleInit(): void {
    this.lines.register({
      name: 'sessions',
      part: 'touch-ups at risk',
      kinds: ['kit cannot be filled', 'touch-up mix out of date'],
      dayFacts: ['day', 'plannedOn', 'closesOn'],
    });
  }
}
