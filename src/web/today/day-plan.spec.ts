import { expect, it } from 'vitest';
import type { AlertView } from '../../alerts/alerts.views.js';
import type { SessionState } from '../../sessions/vocabulary.js';
import { partOfAlert, partOfSession, worstFirst } from './day-plan.js';

const now = '2026-03-10T09:00:00.000Z';

it.each<[SessionState, string | null, string, string]>([
  ['in setup', '2026-03-09T09:00:00.000Z', 'mira', 'now'],
  ['planned', '2026-03-10T08:00:00.000Z', 'mira', 'now'],
  ['planned', '2026-03-10T10:00:00.000Z', 'mira', 'now'],
  ['planned', '2026-03-10T10:00:00.001Z', 'mira', 'later'],
  ['planned', null, 'mira', 'later'],
  ['planned', '2026-03-10T08:00:00.000Z', 'ada', 'given'],
  ['in setup', null, 'ada', 'given'],
  ['completed', '2026-03-10T08:00:00.000Z', 'mira', 'over'],
  ['cancelled', '2026-03-10T08:00:00.000Z', 'ada', 'over'],
  ['not attended', '2026-03-10T08:00:00.000Z', 'mira', 'over'],
])('puts a session that is %s at %s for %s under %s', (state, plannedStart, artistId, part) => {
  expect(partOfSession({ state, plannedStart, artistId }, 'mira', now)).toBe(part);
});

it.each<[AlertView['severity'], string | null, string | null, string]>([
  ['urgent', null, null, 'now'],
  ['warning', null, null, 'now'],
  ['notice', null, null, 'later'],
  ['notice', 'mira', null, 'now'],
  ['urgent', 'ada', null, 'given'],
  ['notice', null, 'mira', 'now'],
  ['urgent', null, 'ada', 'given'],
  ['warning', 'ada', 'mira', 'now'],
  ['warning', 'mira', 'ada', 'now'],
])(
  'puts an alert that is %s, taken on by %s and given to %s under %s',
  (severity, acknowledgedBy, givenTo, part) => {
    expect(partOfAlert({ severity, acknowledgedBy, givenTo }, 'mira')).toBe(part);
  },
);

it('shows the worst alert first, then the oldest', () => {
  const alert = (severity: AlertView['severity'], openedAt: string) => ({ severity, openedAt }) as AlertView;
  const alerts = [alert('notice', '1'), alert('urgent', '3'), alert('warning', '2'), alert('urgent', '1')];
  expect(alerts.sort(worstFirst).map(({ severity, openedAt }) => `${severity} ${openedAt}`)).toEqual([
    'urgent 1',
    'urgent 3',
    'warning 2',
    'notice 1',
  ]);
});
