import { describe, expect, it } from 'vitest';
import type { Audience, PersonToTell } from '../outbox/who-is-told.js';
import { defaultPreference } from '../preferences/default-preference.js';
import { turnNow, type WaitingTurn } from './turn-now.js';

function person(personId: string, leads = true, role: PersonToTell['role'] = 'manager'): PersonToTell {
  const destinations = leads ? [{ id: `${personId}'s` }] : [];
  return { personId, role, preference: defaultPreference(role, false), destinations };
}

function audience(...people: PersonToTell[]): Audience {
  return { webhooks: [], people, personIds: [], timeZone: 'Europe/Vienna' };
}

const waiting = (more: Partial<WaitingTurn> = {}): WaitingTurn => ({
  givenTo: null,
  turn: 1,
  isOver: true,
  told: new Set(['first']),
  ...more,
});

const three = audience(person('first'), person('second'), person('third'));

describe('turnNow', () => {
  it('is the next of the order once a turn is over, and not before', () => {
    expect(turnNow(waiting(), three)).toBe('second');
    expect(turnNow(waiting({ isOver: false }), three)).toBeUndefined();
  });

  it('passes over nobody when somebody who was told has left', () => {
    expect(turnNow(waiting(), audience(person('second'), person('third')))).toBe('second');
  });

  it('is everybody once all of the order were told, and nobody while nothing leads to anybody', () => {
    const told = new Set(['first', 'second', 'third']);
    expect(turnNow(waiting({ told }), three)).toBeNull();
    expect(turnNow(waiting({ told, isOver: false }), three)).toBeUndefined();
    expect(turnNow(waiting({ told }), audience(person('first', false)))).toBeUndefined();
  });

  it('is at once the first whom something leads to, where nobody could be told before', () => {
    const untold = waiting({ turn: 0, isOver: false, told: new Set() });
    expect(turnNow(untold, audience(person('first', false)))).toBeUndefined();
    expect(turnNow(untold, audience(person('first', false), person('second')))).toBe('second');
  });

  it('is at once the first of the order, where nothing leads to whom it was given to', () => {
    const given = waiting({ givenTo: 'artist', turn: 0, isOver: false, told: new Set(['artist', 'first']) });
    const artist = person('artist', false, 'artist');
    expect(turnNow(given, audience(person('first'), person('second'), artist))).toBe('second');
  });
});
