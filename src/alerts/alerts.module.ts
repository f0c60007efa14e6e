import { Module } from '@nestjs/common';
import { Alert } from './alert.entity.js';
import { Alerts } from './alerts.service.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { OutboxRow } from './outbox-row.entity.js';

export const alertsEntities = [Alert, OutboxRow];

@Module({
  controllers: [],
  providers: [Alerts, ConditionEvaluators],
  exports: [Alerts, ConditionEvaluators],
})
export class AlertsModule {}
