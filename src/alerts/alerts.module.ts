import { Module } from '@nestjs/common';
import { IdentityModule } from '../identity/identity.module.js';
import { Alert } from './alert.entity.js';
import { AlertAnswers } from './alert-answers.service.js';
import { AlertEntry } from './alert-entry.entity.js';
import { AlertHistory } from './alert-history.service.js';
import { AlertList } from './alert-list.service.js';
import { AlertSteps } from './alert-steps.service.js';
import { AlertsController } from './alerts.controller.js';
import { Alerts } from './alerts.service.js';
import { CalendarAddressController } from './calendar/calendar-address.controller.js';
import { CalendarAddress } from './calendar/calendar-address.entity.js';
import { CalendarAddresses } from './calendar/calendar-addresses.service.js';
import { CalendarEntries } from './calendar/calendar-entries.service.js';
import { CalendarFeed } from './calendar/calendar-feed.service.js';
import { CalendarWriter } from './calendar/calendar-writer.service.js';
import { CalendarsController } from './calendar/calendars.controller.js';
import { AlertChannels } from './channels/alert-channels.service.js';
import { LogChannel } from './channels/log/log-channel.service.js';
import { MailChannel } from './channels/mail/mail-channel.service.js';
import { MessageWriter } from './channels/message-writer.service.js';
import { PushChannel } from './channels/push/push-channel.service.js';
import { PushKeys } from './channels/push/push-keys.service.js';
import { WebhookChannel } from './channels/webhook/webhook-channel.service.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { AlertDestination } from './destinations/alert-destination.entity.js';
import { AlertDestinationsController } from './destinations/alert-destinations.controller.js';
import { DepartedDestinations } from './destinations/departed-destinations.service.js';
import { DestinationList } from './destinations/destination-list.service.js';
import { DestinationViews } from './destinations/destination-views.service.js';
import { Destinations } from './destinations/destinations.service.js';
import { OpenedDestinations } from './destinations/opened-destinations.service.js';
import { DueAgain } from './due-again.service.js';
import { HandOn } from './handing-on/hand-on.service.js';
import { HandingOnController } from './handing-on/handing-on.controller.js';
import { HandingOn } from './handing-on/handing-on.entity.js';
import { HandingOnSettings } from './handing-on/handing-on.service.js';
import { LiveController } from './live/live.controller.js';
import { LiveStreams } from './live/live-streams.service.js';
import { Deliver } from './outbox/deliver.service.js';
import { DeliveriesController } from './outbox/deliveries.controller.js';
import { DeliveryList } from './outbox/delivery-list.service.js';
import { OutboxRow } from './outbox/outbox-row.entity.js';
import { OutboxStates } from './outbox/outbox-states.service.js';
import { Promises } from './outbox/promises.service.js';
import { Relay } from './outbox/relay.service.js';
import { AlertPreference } from './preferences/alert-preference.entity.js';
import { AlertPreferencesController } from './preferences/alert-preferences.controller.js';
import { AlertPreferences } from './preferences/alert-preferences.service.js';
import { ToldPeople } from './preferences/told-people.service.js';
import { alertQueue } from './queue/alert-queue.provider.js';
import { QueueHealth } from './queue/queue-health.service.js';
import { ScheduleStates } from './schedule/schedule-states.service.js';
import { Schedules } from './schedule/schedules.service.js';
import { Sweep } from './schedule/sweep.service.js';
import { SettingsJudgement } from './settings-judgement.service.js';
import { MorningSummariesController } from './summaries/morning-summaries.controller.js';
import { MorningSummaries } from './summaries/morning-summaries.service.js';
import { MorningSummary } from './summaries/morning-summary.entity.js';
import { OwnSummaries } from './summaries/own-summaries.service.js';
import { SummaryLines } from './summaries/summary-lines.service.js';
import { SummaryReaders } from './summaries/summary-readers.service.js';

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
  controllers: [
    AlertDestinationsController,
    AlertPreferencesController,
    AlertsController,
    DeliveriesController,
    HandingOnController,
    CalendarAddressController,
    CalendarsController,
    LiveController,
    MorningSummariesController,
  ],
  providers: [
    AlertAnswers,
    AlertChannels,
    AlertHistory,
    AlertList,
    AlertPreferences,
    alertQueue,
    Alerts,
    AlertSteps,
    CalendarAddresses,
    CalendarEntries,
    CalendarFeed,
    CalendarWriter,
    ConditionEvaluators,
    Deliver,
    DeliveryList,
    DepartedDestinations,
    DestinationList,
    Destinations,
    DestinationViews,
    DueAgain,
    HandingOnSettings,
    HandOn,
    LiveStreams,
    LogChannel,
    MailChannel,
    MessageWriter,
    MorningSummaries,
    OpenedDestinations,
    OutboxStates,
    OwnSummaries,
    Promises,
    PushChannel,
    PushKeys,
    QueueHealth,
    Relay,
    Schedules,
    ScheduleStates,
    SettingsJudgement,
    SummaryLines,
    SummaryReaders,
    Sweep,
    ToldPeople,
    WebhookChannel,
  ],
  exports: [
    Alerts,
    CalendarEntries,
    ConditionEvaluators,
    QueueHealth,
    Schedules,
    ScheduleStates,
    SummaryLines,
  ],
})
export class AlertsModule {}
