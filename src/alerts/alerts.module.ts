import { Module } from '@nestjs/common';
import { IdentityModule } from '../identity/identity.module.js';
import { Alert } from './alert.entity.js';
import { AlertList } from './alert-list.service.js';
import { AlertsController } from './alerts.controller.js';
import { Alerts } from './alerts.service.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { Deliver } from './deliver.service.js';
import { InProcessQueue } from './in-process-queue.service.js';
import { LogChannel } from './log-channel.service.js';
import { OutboxRow } from './outbox-row.entity.js';
import { Relay } from './relay.service.js';
import { SettingsJudgement } from './settings-judgement.service.js';
import { Sweep } from './sweep.service.js';

export const alertsEntities = [Alert, OutboxRow];

@Module({
  imports: [IdentityModule],
  controllers: [AlertsController],
  providers: [
    AlertList,
    Alerts,
    ConditionEvaluators,
    Deliver,
    InProcessQueue,
    LogChannel,
    Relay,
    SettingsJudgement,
    Sweep,
  ],
  exports: [Alerts, ConditionEvaluators],
})
export class AlertsModule {}
