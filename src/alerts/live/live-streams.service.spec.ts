import { EventEmitter } from 'node:events';
import type { FastifyReply } from 'fastify';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { StudioActor } from '../../identity/actor.guard.js';
import type { Requester } from '../../identity/sign-in/credentials.service.js';
import type { StillAdmitted } from '../../identity/still-admitted.service.js';
import type { Database } from '../../platform/database/database.js';
import { ProcessRole } from '../../platform/process-role.js';
import { LiveStreams } from './live-streams.service.js';

const actor = { studioId: 's1', personId: 'p1' } as StudioActor;
const requester = { browser: { signInId: 'b1' } } as Requester;
/** As many as one person may have open. */
const most = 8;

/** The answer to a browser, as far as it is used. */
class Answer extends EventEmitter {
  headersSent = false;
  destroyed = false;
  writableEnded = false;
  writableLength = 0;
  writeHead = () => {
    this.headersSent = true;
  };
  write = () => true;
  setHeader = () => undefined;
  end = () => undefined;
}

describe('a page that is told of alerts', () => {
  let streams: LiveStreams;

  beforeEach(() => {
    vi.useFakeTimers();
    const database = { read: async () => [] } as unknown as Database;
    const stillAdmitted = { may: async () => true } as unknown as StillAdmitted;
    streams = new LiveStreams(database, new ProcessRole(true), stillAdmitted);
  });
  afterEach(async () => {
    await streams.onModuleDestroy();
    vi.useRealTimers();
  });

  const open = async (answer = new Answer()) => {
    const reply = { raw: answer, hijack: () => undefined, getHeaders: () => ({}) };
    await streams.open(actor, requester, undefined, reply as unknown as FastifyReply);
    return answer;
  };

  it('is one of a bounded number', async () => {
    for (let number = 0; number < most; number += 1) await open();
    await expect(open()).rejects.toThrow('as many as one person may');
  });

  it('is not counted when it left before it was taken on', async () => {
    for (let number = 0; number < most; number += 1) {
      const left = new Answer();
      left.destroyed = true;
      await open(left);
      expect(left.headersSent).toBe(false);
    }
    await expect(open()).resolves.toMatchObject({ headersSent: true });
  });

  it('is no longer counted when it ended without a word', async () => {
    for (let number = 0; number < most; number += 1) (await open()).destroyed = true;
    await vi.advanceTimersByTimeAsync(20_000);
    await expect(open()).resolves.toMatchObject({ headersSent: true });
  });
});
