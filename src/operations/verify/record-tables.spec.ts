import { describe, expect, it } from 'vitest';
import { asMade, keysOfRecord, uncoveredTables } from './record-tables.js';

describe('the tables of the record', () => {
  it('take a delivery as it was when it was promised, whatever became of it', () => {
    const promised = {
      studio_id: 's',
      id: 'd',
      alert_id: 'a',
      event: 'opened',
      channel: 'log',
      state: 'pending',
      attempts: 0,
      begun: null,
      next_attempt_at: '2026-03-01T09:30:00.000Z',
      last_error: null,
      created_at: '2026-03-01T09:30:00.000Z',
      settled_at: null,
    };
    const tried = {
      ...promised,
      state: 'sent',
      attempts: 3,
      next_attempt_at: '2026-03-01T10:00:00.000Z',
      last_error: 'nobody answered',
      settled_at: '2026-03-01T10:00:00.000Z',
    };
    expect(asMade.outbox?.(tried)).toEqual(promised);
    expect(asMade.outbox?.({ ...tried, event: 'closed' })).not.toEqual(promised);
  });

  it('are no table twice: what is not covered needs neither a key nor a look as it was made', () => {
    for (const table of [...Object.keys(keysOfRecord), ...Object.keys(asMade)]) {
      expect(uncoveredTables).not.toHaveProperty(table);
    }
  });
});
