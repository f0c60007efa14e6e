import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { listenToAlerts } from './alert-stream.js';

/** The part of the browser's EventSource that is used; a test says what it hears. */
class Stream extends EventTarget {
  static readonly CONNECTING = 0;
  static readonly CLOSED = 2;
  static opened: Stream[] = [];
  isClosed = false;
  readyState = Stream.CONNECTING;

  constructor(readonly url: string) {
    super();
    Stream.opened.push(this);
  }

  close(): void {
    this.isClosed = true;
  }

  hears(event: string, sequence: number): void {
    this.dispatchEvent(new MessageEvent(event, { data: JSON.stringify({ sequence }) }));
  }

  fails(): void {
    this.dispatchEvent(new Event('error'));
  }

  isRefused(): void {
    this.readyState = Stream.CLOSED;
    this.fails();
  }
}

const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
const turn = (visibilityState: 'visible' | 'hidden') => {
  page.visibilityState = visibilityState;
  page.dispatchEvent(new Event('visibilitychange'));
};
const open = () => Stream.opened.filter(({ isClosed }) => !isClosed);
const heard = { onNews: vi.fn(), onLost: vi.fn() };
let end: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  vi.spyOn(Math, 'random').mockReturnValue(1);
  vi.stubGlobal('EventSource', Stream);
  vi.stubGlobal('document', page);
  page.visibilityState = 'visible';
  Stream.opened = [];
  end = listenToAlerts('s', heard);
});
afterEach(() => {
  end();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  vi.clearAllMocks();
  vi.useRealTimers();
});

it('tells of news, and not of what was there when it began', () => {
  const [stream] = Stream.opened;
  expect(stream?.url).toBe('/api/v1/studios/s/alerts/live');
  stream?.hears('connected', 7);
  expect(heard.onNews).not.toHaveBeenCalled();
  stream?.hears('alert', 8);
  expect(heard.onNews).toHaveBeenCalledTimes(1);
});

it('opens a lost stream again, waiting longer each time, and tells of what it missed', () => {
  open()[0]?.hears('connected', 7);
  open()[0]?.fails();
  expect(heard.onLost).toHaveBeenCalledTimes(1);
  expect(open()).toHaveLength(0);
  vi.advanceTimersByTime(999);
  expect(open()).toHaveLength(0);
  vi.advanceTimersByTime(1);
  open()[0]?.fails();
  vi.advanceTimersByTime(1_999);
  expect(open()).toHaveLength(0);
  vi.advanceTimersByTime(1);
  open()[0]?.hears('connected', 7);
  expect(heard.onNews).not.toHaveBeenCalled();
  open()[0]?.fails();
  // What stood is forgiven: the wait begins anew.
  vi.advanceTimersByTime(1_000);
  open()[0]?.hears('connected', 9);
  expect(heard.onNews).toHaveBeenCalledTimes(1);
  expect(Stream.opened).toHaveLength(4);
});

it('asks again only after a minute where it is refused, and does not ask who is signed in for it', () => {
  open()[0]?.isRefused();
  vi.advanceTimersByTime(59_999);
  expect(open()).toHaveLength(0);
  vi.advanceTimersByTime(1);
  open()[0]?.isRefused();
  vi.advanceTimersByTime(119_999);
  expect(Stream.opened).toHaveLength(2);
  vi.advanceTimersByTime(1);
  expect(open()).toHaveLength(1);
  expect(heard.onLost).not.toHaveBeenCalled();
});

it('gives its connection back while nobody looks at the page for ten seconds, and has it again at a look', () => {
  turn('hidden');
  vi.advanceTimersByTime(9_999);
  expect(open()).toHaveLength(1);
  turn('visible');
  turn('hidden');
  vi.advanceTimersByTime(10_000);
  expect(open()).toHaveLength(0);
  turn('visible');
  expect(open()).toHaveLength(1);
});

it('opens nothing more once it is ended', () => {
  open()[0]?.fails();
  end();
  vi.advanceTimersByTime(600_000);
  turn('hidden');
  turn('visible');
  expect(open()).toHaveLength(0);
});
