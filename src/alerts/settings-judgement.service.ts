import { Injectable, type OnModuleInit } from '@nestjs/common';
import { StudioChanges } from '../identity/studio-changes.service.js';
import { Alerts } from './alerts.service.js';

/** Judges all conditions of a studio anew when it changes the settings they are judged by. */
@Injectable()
export class SettingsJudgement implements OnModuleInit {
  constructor(
    private readonly changes: StudioChanges,
    private readonly alerts: Alerts,
  ) {}

  onModuleInit(): void {
    this.changes.register(async (transaction) => {
      await this.alerts.reconcileAll(transaction);
    });
  }
}
