import { Module } from '@nestjs/common';
import { Alert } from './alert.entity.js';
import { OutboxRow } from './outbox-row.entity.js';

export const alertsEntities = [Alert, OutboxRow];

@Module({ controllers: [], providers: [], exports: [] })
export class AlertsModule {}
