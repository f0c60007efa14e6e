import { describe, expect, it } from 'vitest';
import { reportTimeline, type TimelineFacts } from './report-timeline.js';

const none: TimelineFacts = {
  title: 'Umber',
  kind: 'recall',
  ...{ scopes: [], holds: [], releases: [], decisions: [], findings: [] },
  ...{ contacts: [], dispositions: [], steps: [], closings: [] },
};
const told = (at: string, outcome: string, personId = 'ann') => ({
  at,
  outcome,
  personId,
  audience: 'client',
});

describe('the timeline of a recall', () => {
  it('tells what happened in its order, each with who did it', () => {
    const events = reportTimeline(
      {
        ...none,
        scopes: [
          {
            at: '2026-03-01T09:00:00.000Z',
            personId: 'ann',
            number: 1,
            reason: null,
            noticeSource: 'pasted',
            lots: 2,
          },
          {
            at: '2026-03-03T09:00:00.000Z',
            personId: 'bea',
            number: 2,
            reason: 'The maker added lots',
            noticeSource: null,
            lots: 3,
          },
        ],
        holds: [{ at: '2026-03-01T09:00:00.000Z', personId: 'ann', lots: 2 }],
        decisions: [
          {
            at: '2026-03-02T09:00:00.000Z',
            personId: 'ann',
            lot: 'L1',
            decision: 'not affected',
            reason: 'Another shade.',
          },
        ],
        closings: [
          { at: '2026-03-09T09:00:00.000Z', personId: 'ann', outcome: 'closed', reason: null, overridden: 1 },
        ],
      },
      'UTC',
    );
    expect(events.map(({ words }) => words)).toEqual([
      'Recall opened from the text of a notice; its scope meets 2 lots.',
      '2 lots put on hold.',
      'Lot L1 decided to be not affected: Another shade.',
      'Scope amended (version 2): The maker added lots. It meets 3 lots now.',
      'Closed, with 1 obstacle overridden.',
    ]);
    expect(events.map(({ personId }) => personId)).toEqual(['ann', 'ann', 'ann', 'bea', 'ann']);
  });

  it('tells attempts a local day at a time, by their counts', () => {
    const events = reportTimeline(
      {
        ...none,
        contacts: [
          told('2026-03-01T22:30:00.000Z', 'reached'),
          told('2026-03-01T23:30:00.000Z', 'no answer'),
          told('2026-03-02T09:00:00.000Z', 'reached', 'bea'),
          told('2026-03-02T08:00:00.000Z', 'reached', 'bea'),
        ],
      },
      'Europe/Vienna',
    );
    expect(events).toEqual([
      {
        at: '2026-03-01T22:30:00.000Z',
        event: 'told',
        words: '1 attempt to tell somebody – client, reached: 1.',
        personId: 'ann',
      },
      {
        at: '2026-03-02T09:00:00.000Z',
        event: 'told',
        words: '3 attempts to tell somebody – client, no answer: 1; client, reached: 2.',
        personId: null,
      },
    ]);
  });
});
