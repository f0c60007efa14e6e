import { Logger } from '@nestjs/common';
import { expect, it, vi } from 'vitest';
import { PlanRunner } from './plan-runner.service.js';

it('goes on with the next plan when one can be neither made nor ended', async () => {
  const asked: string[] = [];
  const waiting = ['first', 'second'].map((id) => ({ id, studioId: id, purpose: 'plan', whatIf: null }));
  const find = async (_: unknown, { where }: { where: { state: string } }) =>
    where.state === 'waiting' ? waiting : [];
  const studioActors = {
    of: async (studioId: string) => {
      asked.push(studioId);
      throw new Error('The database is away.');
    },
  };
  const silence = vi.spyOn(Logger.prototype, 'error').mockImplementation(() => undefined);
  const parts = [
    { reader: { manager: { find } } },
    { follow: () => undefined },
    studioActors,
    { now: () => '2026-03-02T08:00:00.000Z' },
    {},
    { serving: true, ending: false },
    { forget: () => undefined },
    {},
    {},
    { cutOff: async () => [] },
  ] as unknown as ConstructorParameters<typeof PlanRunner>;
  const runner = new PlanRunner(...parts);
  await runner.onApplicationBootstrap();
  await runner.onModuleDestroy();
  silence.mockRestore();
  expect(asked).toEqual(['first', 'second']);
});
