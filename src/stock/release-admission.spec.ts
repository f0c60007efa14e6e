import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { admitRelease, type ReleaseFacts } from './release-admission.js';

const recall = (facts: Partial<ReleaseFacts>): ReleaseFacts => ({
  kind: 'recall',
  personId: 'ada',
  requests: [],
  others: 1,
  ...facts,
});
const asked = (personId: string | null, hasPhoto = false) => ({ personId, hasPhoto });

describe('releasing a hold', () => {
  it('asks nothing more of what is not recalled', () => {
    for (const kind of ['quarantine', 'compliance'] as const) {
      expect(admitRelease(recall({ kind }))).toEqual({ allowed: true, seenBy: null, request: null });
    }
  });

  it('refuses what is recalled until somebody asked', () => {
    expect(admitRelease(recall({}))).toMatchObject({
      allowed: false,
      message: expect.stringMatching(/one person asks .* another releases/),
    });
    expect(admitRelease(recall({ others: 0 }))).toMatchObject({
      allowed: false,
      message: expect.stringMatching(/a reason and a photo/),
    });
  });

  it('lets another release what one asked for, photo or not', () => {
    const request = asked('ben');
    expect(admitRelease(recall({ requests: [request] }))).toEqual({
      allowed: true,
      seenBy: 'second person',
      request,
    });
  });

  it('lets nobody release what they asked for themselves while another may', () => {
    expect(admitRelease(recall({ requests: [asked('ada', true)] }))).toMatchObject({
      allowed: false,
      message: expect.stringMatching(/second pair of eyes/),
    });
  });

  it('takes a photo for the second person where there is none', () => {
    const pictured = asked('ada', true);
    expect(admitRelease(recall({ others: 0, requests: [asked('ada'), pictured] }))).toEqual({
      allowed: true,
      seenBy: 'photo',
      request: pictured,
    });
    expect(admitRelease(recall({ others: 0, requests: [asked('ada')] }))).toMatchObject({
      allowed: false,
      message: expect.stringMatching(/Ask again with a photo/),
    });
  });

  it('never lets one person alone release what is recalled without a photo', () => {
    const people = fc.constantFrom('ada', 'ben', 'cid');
    fc.assert(
      fc.property(
        people,
        fc.array(fc.record({ personId: people, hasPhoto: fc.boolean() }), { maxLength: 4 }),
        fc.nat({ max: 3 }),
        (personId, requests, others) => {
          const admission = admitRelease(recall({ personId, requests, others }));
          const anotherAsked = requests.some((request) => request.personId !== personId);
          const alonePictured = others === 0 && requests.some(({ hasPhoto }) => hasPhoto);
          expect(admission.allowed).toBe(anotherAsked || alonePictured);
        },
      ),
    );
  });
});
