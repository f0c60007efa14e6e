import { describe, expect, it } from 'vitest';
import { completionTimeFault, removalFault } from './visit-times.js';

describe('the times of an anaesthetic', () => {
  it('are wrong when it was taken off before it was put on', () => {
    expect(removalFault('2026-03-10T10:00:00.000Z', '2026-03-10T09:59:59.999Z')).toContain('removedAt');
    expect(removalFault('2026-03-10T10:00:00.000Z', '2026-03-10T10:00:00.000Z')).toBeNull();
    expect(removalFault('2026-03-10T10:00:00.000Z', '2026-03-10T10:20:00.000Z')).toBeNull();
  });

  it('may be told one without the other', () => {
    expect(removalFault(null, '2026-03-10T10:00:00.000Z')).toBeNull();
    expect(removalFault('2026-03-10T10:00:00.000Z', null)).toBeNull();
  });
});

describe('the end of a session', () => {
  it('cannot lie before its setup, but for clocks that differ', () => {
    const setup = '2026-03-10T10:00:00.000Z';
    expect(completionTimeFault('2026-03-10T09:54:59.999Z', setup)).toContain(setup);
    expect(completionTimeFault('2026-03-10T09:55:00.000Z', setup)).toBeNull();
    expect(completionTimeFault('2026-03-10T11:00:00.000Z', setup)).toBeNull();
    expect(completionTimeFault('2026-03-10T09:00:00.000Z', null)).toBeNull();
  });
});
