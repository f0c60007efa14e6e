import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propertySettings } from '../../../tests/support/property-settings.js';
import type { DayFacts, DayLine } from '../../sessions/day-facts.js';
import { withWaiting } from './known-day.js';
import type { WaitingWrite } from './waiting-write.js';

const ids = ['1', '2', '3', '4'];
const line = (id: string, sessionId = 'a'): DayLine => ({
  ...{ id, sessionId, containerId: `of ${id}`, lotId: 'lot', productId: 'product', pieces: 1, serial: null },
  ...{ knownBy: 'typed', admittedAt: '2026-03-10T09:00:00.000Z' },
});
const day = (lines: DayLine[], containerStates: readonly string[] = []): DayFacts =>
  ({
    sessions: ['a', 'b'].map((id) => ({ id, state: 'planned' })),
    containers: containerStates.map((state, index) => ({
      containerId: `of ${index + 1}`,
      state,
      openedAt: null,
    })),
    lines,
  }) as unknown as DayFacts;

const event = { occurredAt: '2026-03-10T10:00:00.000Z', studioId: 'studio', personId: 'mira' };
const scan = (id: string, put: DayLine | null | undefined, sessionId = 'a'): WaitingWrite => ({
  ...{ ...event, id, sessionId, kind: 'scan', shown: { symbol: id } },
  ...(put !== undefined && {
    judgedHere: { verdict: put ? 'admitted' : 'refused', label: 'Umber', containerId: `of ${id}`, line: put },
  }),
});
const takeOff = (lineId: string): WaitingWrite => ({
  ...{ ...event, id: `off ${lineId}`, sessionId: 'a', kind: 'take off', lineId },
});
const open = (containerId: string): WaitingWrite => ({
  ...{ ...event, id: `open ${containerId}`, sessionId: 'a', kind: 'open', containerId },
});
const setup = (sessionId: string): WaitingWrite => ({
  ...event,
  id: `set up ${sessionId}`,
  sessionId,
  kind: 'setup',
});

const idsOf = ({ lines }: DayFacts) => lines.map(({ id }) => id);

describe('the day with what has happened on this device', () => {
  it('begins only the sessions whose setup waits', () => {
    const { sessions } = withWaiting(day([]), [setup('b')]);
    expect(sessions.map(({ state }) => state)).toEqual(['planned', 'in setup']);
  });

  it('holds what was judged to lie on a tray here, and nothing of what was refused, not known or not judged', () => {
    expect(
      idsOf(withWaiting(day([line('1')]), [scan('2', line('2')), scan('3', null), scan('4', undefined)])),
    ).toEqual(['1', '2']);
  });

  it('holds nothing any more that was taken off here, also when it was laid here', () => {
    const waiting = [scan('2', line('2')), takeOff('1'), takeOff('2')];
    expect(idsOf(withWaiting(day([line('1'), line('3')]), waiting))).toEqual(['3']);
  });

  it('counts the opened life of what was opened here from then on, and of nothing that was open or gone before', () => {
    const { containers } = withWaiting(
      day([], ['sealed', 'opened', 'discarded', 'sealed']),
      ['1', '2', '3'].map((id) => open(`of ${id}`)),
    );
    expect(containers.map(({ state, openedAt }) => [state, openedAt])).toEqual([
      ['opened', event.occurredAt],
      ['opened', null],
      ['discarded', null],
      ['sealed', null],
    ]);
  });

  it('shows a line once, whether the service, this device or both know it, and changes nothing it was given', () => {
    const someIds = fc.uniqueArray(fc.constantFrom(...ids));
    fc.assert(
      fc.property(someIds, someIds, someIds, (told, laidHere, takenOff) => {
        const facts = day(told.map((id) => line(id)));
        const before = structuredClone(facts);
        const waiting = [...laidHere.map((id) => scan(id, line(id))), ...takenOff.map(takeOff)];
        const known = withWaiting(facts, waiting);
        const expected = [...new Set([...told, ...laidHere])].filter((id) => !takenOff.includes(id));
        expect(idsOf(known)).toEqual(expected);
        // Joined twice it is the same: a line may be told while its scan still waits.
        expect(withWaiting(known, waiting)).toEqual(known);
        expect(facts).toEqual(before);
      }),
      propertySettings('the day with what waits', 300),
    );
  });
});
