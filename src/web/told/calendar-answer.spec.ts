import { afterEach, describe, expect, it, vi } from 'vitest';
import { entriesAt } from './calendar-answer.js';

const url = 'https://studio.example/api/v1/calendars/secret.ics';
const answering = (text: string, status = 200) =>
  vi.stubGlobal('fetch', (asked: string) =>
    asked === '/api/v1/calendars/secret.ics'
      ? Promise.resolve(new Response(text, { status }))
      : Promise.reject(new Error(`It was asked for ${asked}.`)),
  );
afterEach(() => vi.unstubAllGlobals());

describe('the test of a calendar address', () => {
  it('counts the entries', async () => {
    answering('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n');
    expect(await entriesAt(url)).toBe(1);
    answering('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n');
    expect(await entriesAt(url)).toBe(0);
  });

  it('takes nothing else for a calendar, and no silence for one', async () => {
    answering('<html>', 200);
    expect(await entriesAt(url)).toBeUndefined();
    answering('BEGIN:VCALENDAR', 404);
    expect(await entriesAt(url)).toBeUndefined();
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('no network')));
    expect(await entriesAt(url)).toBeUndefined();
  });
});
