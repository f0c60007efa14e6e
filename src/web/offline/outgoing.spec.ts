import { beforeEach, expect, it, vi } from 'vitest';
import type { Difference } from './difference.js';
import type { WaitingWrite } from './waiting-write.js';

const kept = {
  waiting: new Map<string, WaitingWrite>(),
  differences: new Map<string, Difference>(),
  isFull: false,
};
vi.mock('./device-store.js', () => {
  const stored = async (work: () => void) => {
    if (kept.isFull) throw new Error('QuotaExceededError');
    work();
  };
  return {
    waitingWrites: async () => [...kept.waiting.values()],
    keptDifferences: async () => [...kept.differences.values()],
    keepWaiting: (write: WaitingWrite) => stored(() => kept.waiting.set(write.id, write)),
    dropWaiting: (id: string) => stored(() => kept.waiting.delete(id)),
    keepDifference: (one: Difference) => stored(() => kept.differences.set(one.id, one)),
    dropDifference: (id: string) => stored(() => kept.differences.delete(id)),
  };
});

const sent: string[] = [];
let answerTo: (write: WaitingWrite) => unknown;
vi.mock('./send-write.js', () => ({
  isScanAnswer: (answer: object) => 'verdict' in answer,
  sendWrite: async (write: WaitingWrite) => {
    sent.push(write.id);
    return answerTo(write);
  },
}));

/** Of the page that is open: a new one has modules of its own. */
let ServiceProblem: typeof import('../service/problem.js').ServiceProblem;
const problem = (code: string, status: number) =>
  new ServiceProblem({ status, code, title: '', detail: `It is ${code}.` });
const write = (id: string, personId = 'mira'): WaitingWrite => ({
  id,
  occurredAt: '2026-03-10T09:00:00.000Z',
  studioId: 'studio',
  sessionId: 'session',
  personId,
  kind: 'scan',
  shown: { symbol: id },
});
const admitted = () => ({
  verdict: 'admitted',
  reasons: [],
  thing: { containerId: 'bottle', label: 'Umber' },
});

/** As after the page was loaded anew. */
async function newPage() {
  vi.resetModules();
  ({ ServiceProblem } = await import('../service/problem.js'));
  return (await import('./outgoing.js')).outgoing;
}

beforeEach(() => {
  vi.useFakeTimers();
  kept.waiting.clear();
  kept.differences.clear();
  kept.isFull = false;
  sent.length = 0;
  answerTo = admitted;
  return () => vi.useRealTimers();
});

it('sends in order, in the name of whoever did it and of nobody else', async () => {
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'), write('2', 'other'), write('3'));
  await vi.waitFor(() => expect(sent).toEqual(['1', '3']));
  await vi.waitFor(() => expect([...kept.waiting.keys()]).toEqual(['2']));
  await page.sendFor(['other']);
  await vi.waitFor(() => expect(sent).toEqual(['1', '3', '2']));
});

it('keeps what waits through a new page, and sends it with the id it had', async () => {
  answerTo = () => {
    throw problem('unreachable', 0);
  };
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('2'), write('1'));
  await vi.waitFor(() => expect(kept.waiting.size).toBe(2));
  expect(sent).toEqual(['2']);
  answerTo = admitted;
  const next = await newPage();
  await next.sendFor(['mira']);
  await vi.waitFor(() => expect(sent).toEqual(['2', '1', '2']));
  await vi.waitFor(() => expect(kept.waiting.size).toBe(0));
});

it.each([
  ['unreachable', 0],
  ['sign-in-needed', 401],
  ['too-many-requests', 429],
  ['internal-error', 500],
])('loses nothing to a passing %s', async (code, status) => {
  answerTo = () => {
    throw problem(code, status);
  };
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'));
  await vi.waitFor(() => expect(page.snapshot().problem?.code).toBe(code));
  expect(page.snapshot().waiting.map(({ id }) => id)).toEqual(['1']);
  answerTo = admitted;
  if (code === 'sign-in-needed') await page.sendFor(['mira']);
  else await vi.advanceTimersByTimeAsync(5_000);
  await vi.waitFor(() => expect(page.snapshot().waiting).toEqual([]));
});

it('goes on after a refusal, and keeps it to be seen where the page had gone on without it', async () => {
  let isAway = true;
  answerTo = ({ id }) => {
    if (isAway) throw problem('unreachable', 0);
    if (id === '1') throw problem('wrong-state', 409);
    return admitted();
  };
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'), write('2'));
  await vi.waitFor(() => expect(page.snapshot().problem).toBeDefined());
  page.judgedHere('1', { verdict: 'admitted', label: 'Umber', containerId: 'bottle', line: null });
  page.judgedHere('2', { verdict: 'admitted', label: 'Umber', containerId: 'bottle', line: null });
  isAway = false;
  await vi.advanceTimersByTimeAsync(5_000);
  await vi.waitFor(() => expect(page.snapshot().waiting).toEqual([]));
  const later = await newPage();
  await later.sendFor([]);
  expect(later.snapshot().differences).toMatchObject([
    { id: '1', label: 'Umber', reasons: ['It is wrong-state.'] },
  ]);
  later.seen('1');
  await vi.waitFor(() => expect(kept.differences.size).toBe(0));
});

it('takes no answer for none after ten seconds', async () => {
  answerTo = () => new Promise(() => undefined);
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'));
  await vi.advanceTimersByTimeAsync(10_000);
  await vi.waitFor(() => expect(page.snapshot().problem?.code).toBe('unreachable'));
  expect(page.snapshot().isSending).toBe(false);
});

it('says that the browser keeps nothing, and still sends', async () => {
  kept.isFull = true;
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'));
  await vi.waitFor(() => expect(page.snapshot().isKept).toBe(false));
  await vi.waitFor(() => expect(page.snapshot().waiting).toEqual([]));
});
