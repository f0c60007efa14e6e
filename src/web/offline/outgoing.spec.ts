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
  ['not-ready', 503],
  ['passkey-needed', 403],
  ['signed-in-as-another', 403],
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
  if (status === 401 || status === 403) await page.sendFor(['mira']);
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

it('says that the browser keeps nothing, and still sends', async () => {
  kept.isFull = true;
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'));
  const told: boolean[] = [];
  page.subscribe(() => told.push(page.snapshot().isKept));
  await vi.waitFor(() => expect(told).toContain(false));
  await vi.waitFor(() => expect(page.snapshot().waiting).toEqual([]));
});

it('says so no more once nothing waits', async () => {
  kept.isFull = true;
  answerTo = () => {
    throw problem('unreachable', 0);
  };
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'));
  await vi.waitFor(() => expect(page.snapshot().isKept).toBe(false));
  kept.isFull = false;
  answerTo = admitted;
  await vi.advanceTimersByTimeAsync(5_000);
  await vi.waitFor(() => expect(page.snapshot()).toMatchObject({ waiting: [], isKept: true }));
});

it('sends what was kept before a page opened before what is added to it at once', async () => {
  kept.waiting.set('1', write('1'));
  const page = await newPage();
  void page.sendFor(['mira']);
  page.add(write('2'));
  await vi.waitFor(() => expect(sent).toEqual(['1', '2']));
});

it('sends what another page left that was closed meanwhile', async () => {
  const page = await newPage();
  await page.sendFor(['mira']);
  kept.waiting.set('1', write('1'));
  await page.sendFor(['mira']);
  await vi.waitFor(() => expect(sent).toEqual(['1']));
  await page.sendFor(['mira']);
  expect(sent).toEqual(['1']);
});

it('goes on with the next person where the one before is refused for being signed in no more', async () => {
  let refuse: () => void = () => undefined;
  answerTo = ({ id }) =>
    id === '1'
      ? new Promise((_, fail) => {
          refuse = () => fail(problem('signed-in-as-another', 403));
        })
      : admitted();
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'), write('2', 'other'));
  await vi.waitFor(() => expect(sent).toEqual(['1']));
  const switched = page.sendFor(['other']);
  await vi.advanceTimersByTimeAsync(100);
  refuse();
  await switched;
  await vi.waitFor(() => expect(sent).toEqual(['1', '2']));
  await vi.waitFor(() => expect(page.snapshot().waiting.map(({ id }) => id)).toEqual(['1']));
});

it.each([
  ['when its page shows it', true, 0],
  ['when no page shows it', false, 1],
])('keeps what was refused at once to be seen %s: %s', async (_, isShown, differences) => {
  answerTo = () => {
    throw problem('unknown-symbol', 422);
  };
  const page = await newPage();
  page.onSettled(() => isShown);
  await page.sendFor(['mira']);
  page.add(write('1'));
  await vi.waitFor(() => expect(kept.waiting.size).toBe(0));
  expect(kept.differences.size).toBe(differences);
  expect(page.snapshot().differences).toHaveLength(differences);
});

it('keeps what the service alone refused after its page was closed', async () => {
  kept.waiting.set('1', write('1'));
  kept.waiting.set('2', write('2'));
  answerTo = ({ id }) => (id === '1' ? { ...admitted(), verdict: 'refused' } : admitted());
  const page = await newPage();
  page.onSettled(() => true);
  await page.sendFor(['mira']);
  await vi.waitFor(() => expect(kept.waiting.size).toBe(0));
  expect([...kept.differences.values()]).toMatchObject([
    { id: '1', label: 'Umber', judgedHere: null, judgedThere: 'refused' },
  ]);
});

it('tells nothing of a tray that another device began as well', async () => {
  answerTo = () => {
    throw new ServiceProblem({
      status: 409,
      code: 'wrong-state',
      title: '',
      detail: '',
      state: 'in setup',
    });
  };
  const page = await newPage();
  await page.sendFor(['mira']);
  const { shown: _, ...event } = write('1') as Extract<WaitingWrite, { kind: 'scan' }>;
  page.add({ ...event, kind: 'setup' });
  await vi.waitFor(() => expect(kept.waiting.size).toBe(0));
  expect(page.snapshot().differences).toEqual([]);
});

it('lets a fault of the service at one tray hold up that tray only', async () => {
  answerTo = ({ id }) => {
    if (id === '1') throw problem('internal-error', 500);
    return admitted();
  };
  const page = await newPage();
  await page.sendFor(['mira']);
  page.add(write('1'), write('2'), { ...write('3'), sessionId: 'another' });
  await vi.waitFor(() => expect(page.snapshot().problem?.code).toBe('internal-error'));
  expect(sent).toEqual(['1', '3']);
  answerTo = admitted;
  await vi.advanceTimersByTimeAsync(5_000);
  await vi.waitFor(() => expect(sent).toEqual(['1', '3', '1', '2']));
});
