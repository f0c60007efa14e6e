import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ContainerOfLot, likeliestContainers } from './likeliest-container.js';

const at = '2026-03-10T10:00:00.000Z';
const before = '2026-02-01T10:00:00.000Z';
const after = '2026-04-01T10:00:00.000Z';

function container(containerId: string, given: Partial<ContainerOfLot> = {}): ContainerOfLot {
  const receivedAt = '2026-01-01T10:00:00.000Z';
  return { containerId, lotId: 'lot-1', receivedAt, openedAt: null, endedAt: null, ...given };
}
const chosen = (...containers: ContainerOfLot[]) => likeliestContainers(containers, at).get('lot-1');

describe('the container a late use is booked on', () => {
  it('is the one that was open at that time, even when it has ended since', () => {
    const open = container('open', { openedAt: before, endedAt: after });
    expect(chosen(container('sealed'), container('ended', { endedAt: after }), open)).toBe('open');
  });

  it('is, of two that were open, the one opened last', () => {
    const older = container('older', { openedAt: '2026-01-02T10:00:00.000Z' });
    expect(chosen(older, container('newer', { openedAt: before }))).toBe('newer');
  });

  it('is what has ended since before what is still here', () => {
    expect(chosen(container('sealed'), container('ended', { endedAt: after }))).toBe('ended');
  });

  it('is what was opened since before what is sealed to this day', () => {
    expect(chosen(container('a sealed one'), container('opened', { openedAt: after }))).toBe('opened');
  });

  it('is a sealed one that had been received by then', () => {
    expect(chosen(container('sealed'))).toBe('sealed');
  });

  it('is never what was received later, nor what had ended before', () => {
    expect(chosen(container('later', { receivedAt: after }))).toBeUndefined();
    const ended = container('ended', { openedAt: before, endedAt: '2026-03-01T10:00:00.000Z' });
    expect(chosen(ended)).toBeUndefined();
    expect(chosen()).toBeUndefined();
  });

  it('is what was made for another record only when nothing else can have been it', () => {
    const made = container('made', { receivedAt: before, openedAt: before, endedAt: before });
    expect(chosen(made, container('later', { receivedAt: after }))).toBe('made');
    expect(chosen(made, container('sealed'))).toBe('sealed');
  });

  it('is chosen lot by lot', () => {
    const both = [container('one'), container('two', { lotId: 'lot-2' })];
    expect(likeliestContainers(both, at)).toEqual(
      new Map([
        ['lot-1', 'one'],
        ['lot-2', 'two'],
      ]),
    );
  });

  it('does not depend on the order in which the containers are told', () => {
    const instant = fc.constantFrom(before, at, after);
    const any = fc.record({
      receivedAt: instant,
      openedAt: fc.option(instant, { nil: null }),
      endedAt: fc.option(instant, { nil: null }),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 6 }), (given) => {
        const containers = given.map((one, index) => container(`c${index}`, one));
        expect(chosen(...[...containers].reverse())).toBe(chosen(...containers));
      }),
    );
  });
});
