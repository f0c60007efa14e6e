import { Injectable, type OnModuleInit } from '@nestjs/common';
import { CalendarEntries, type CalendarQuestion } from '../alerts/calendar/calendar-entries.service.js';
import type { CalendarEntry } from '../alerts/calendar/nearest-entries.js';
import type { Read } from '../platform/database/database.js';
import { owedTouchUps } from './owed-touch-ups.query.js';

/** The windows of touch-ups that are owed and not planned yet: by procedure, never by client. */
@Injectable()
export class TouchUpCalendar implements OnModuleInit {
  constructor(private readonly calendar: CalendarEntries) {}

  onModuleInit(): void {
    this.calendar.register({ name: 'touch-ups', entries });
  }
}

async function entries(read: Read, { studioId, timeZone, from }: CalendarQuestion): Promise<CalendarEntry[]> {
  const owed = await owedTouchUps(read, { studioId, timeZone, from });
  const unplanned = owed.filter(({ isFollowed }) => !isFollowed);
  return unplanned.map(({ sessionId, procedureName, completedAt, window, version }) => ({
    key: `touch-up ${sessionId}`,
    firstDay: window.opensOn,
    lastDay: window.closesOn,
    title: `Touch-up due: ${procedureName}`,
    details: [
      `The window is open from ${window.opensOn} through ${window.closesOn}; no visit is planned yet.`,
    ],
    page: `/records/sessions/${sessionId}`,
    recordedAt: completedAt,
    changes: version - 1,
  }));
}
