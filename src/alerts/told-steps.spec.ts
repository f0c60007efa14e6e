import { describe, expect, it } from 'vitest';
import { type StepsOnAlert, toldSteps } from './told-steps.js';

const alert: StepsOnAlert = {
  severity: 'warning',
  openedAt: '2026-01-15T06:00:00.000Z',
  acknowledgedAt: '2026-01-15T08:00:00.000Z',
  acknowledgedBy: 'mara',
  closedAt: '2026-01-16T06:00:00.000Z',
  closedBy: null,
};

describe('toldSteps', () => {
  it('tells opening, acknowledgement and closing of an alert that has no entry', () => {
    expect(toldSteps(alert, [])).toEqual([
      { event: 'opened', severity: 'warning', personId: null, recordedAt: alert.openedAt },
      { event: 'acknowledged', severity: 'warning', personId: 'mara', recordedAt: alert.acknowledgedAt },
      { event: 'closed', severity: 'warning', personId: null, recordedAt: alert.closedAt },
    ]);
  });

  it('tells nothing that did not happen', () => {
    const open = { ...alert, acknowledgedAt: null, acknowledgedBy: null, closedAt: null };
    expect(toldSteps(open, []).map(({ event }) => event)).toEqual(['opened']);
  });

  it('tells of an alert that went on after histories were kept only what is missing', () => {
    expect(toldSteps(alert, ['noted', 'closed']).map(({ event }) => event)).toEqual([
      'opened',
      'acknowledged',
    ]);
    expect(toldSteps(alert, ['opened', 'acknowledged', 'closed'])).toEqual([]);
  });
});
