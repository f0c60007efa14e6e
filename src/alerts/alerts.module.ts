import { Module } from '@nestjs/common';
import { IdentityModule } from '../identity/identity.module.js';
import { Alert } from './alert.entity.js';
import { AlertEntry } from './alert-entry.entity.js';
import { AlertList } from './alert-list.service.js';
import { AlertsController } from './alerts.controller.js';
import { Alerts } from './alerts.service.js';
import { CalendarAddress } from './calendar/calendar-address.entity.js';
import { LogChannel } from './channels/log/log-channel.service.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { AlertDestination } from './destinations/alert-destination.entity.js';
import { HandingOn } from './handing-on/handing-on.entity.js';
import { LiveController } from './live/live.controller.js';
import { LiveStreams } from './live/live-streams.service.js';
import { Deliver } from './outbox/deliver.service.js';
import { OutboxRow } from './outbox/outbox-row.entity.js';
import { Relay } from './outbox/relay.service.js';
import { AlertPreference } from './preferences/alert-preference.entity.js';
import { InProcessQueue } from './queue/in-process-queue.service.js';
import { Sweep } from './schedule/sweep.service.js';
import { SettingsJudgement } from './settings-judgement.service.js';
import { MorningSummary } from './summaries/morning-summary.entity.js';

export const alertsEntities = [
  Alert,
  AlertDestination,
  AlertEntry,
  AlertPreference,
  CalendarAddress,
  HandingOn,
  MorningSummary,
  OutboxRow,
];

@Module({
  imports: [IdentityModule],
  controllers: [AlertsController, LiveController],
  providers: [
    AlertList,
    Alerts,
    ConditionEvaluators,
    Deliver,
    InProcessQueue,
    LiveStreams,
    LogChannel,
    Relay,
    SettingsJudgement,
    Sweep,
  ],
  exports: [Alerts, ConditionEvaluators],
})
export class AlertsModule {}
