import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { RequesterView } from '../../identity/sign-in/sign-in.views.js';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import type { Difference } from './difference.js';
import type { WaitingWrite } from './waiting-write.js';

/**
 * What this device keeps beyond a page. Guarantees: of a client nothing but the reference; the facts of the day and who is
 * signed in are gone with signing out; what waits to be sent, and what turned out otherwise and was not seen yet, stays
 * until it is sent or seen.
 */
interface Kept extends DBSchema {
  /** By studio. */
  facts: { key: string; value: DayFactsView };
  /** One entry: who is signed in, without the name by which they sign in. */
  requester: { key: string; value: { requester: RequesterView; keptAt: string } };
  waiting: { key: string; value: WaitingWrite };
  differences: { key: string; value: Difference };
}

let opened: Promise<IDBPDatabase<Kept>> | undefined;

/** @throws DOMException where the browser keeps nothing, such as in a private window */
function open(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>('lotward', 1, {
    upgrade(database) {
      database.createObjectStore('facts');
      database.createObjectStore('requester');
      database.createObjectStore('waiting', { keyPath: 'id' });
      database.createObjectStore('differences', { keyPath: 'id' });
    },
    // A page of a later version waits for this one to let go.
    blocking(_, __, event) {
      (event.target as IDBDatabase).close();
      opened = undefined;
    },
    terminated() {
      opened = undefined;
    },
  });
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

const requesterKey = 'signed in';
/** As long as a tablet keeps somebody signed in at most: without network nobody else ends it. */
const requesterHours = 12;

export async function keptFacts(studioId: string): Promise<DayFactsView | undefined> {
  return (await open()).get('facts', studioId);
}

let isAsked = false;

export async function keepFacts(facts: DayFactsView): Promise<void> {
  // A browser that is short of space clears what it was not asked to keep.
  if (!isAsked) await navigator.storage?.persist?.().catch(() => undefined);
  isAsked = true;
  await (await open()).put('facts', facts, facts.studioId);
}

export async function keptRequester(): Promise<RequesterView | undefined> {
  const kept = await (await open()).get('requester', requesterKey);
  const isRecent = kept && Date.now() - Date.parse(kept.keptAt) < requesterHours * 3_600_000;
  return isRecent ? kept.requester : undefined;
}

/** The name by which somebody signs in is left out: it may be their e-mail address. */
export async function keepRequester(requester: RequesterView): Promise<void> {
  const signInName = requester.signInName === null ? null : '';
  const kept = { requester: { ...requester, signInName }, keptAt: new Date().toISOString() };
  await (await open()).put('requester', kept, requesterKey);
}

/** At signing out. What waits stays. */
export async function forgetTheDay(): Promise<void> {
  const database = await open();
  await Promise.all([database.clear('facts'), database.clear('requester')]);
}

export async function waitingWrites(): Promise<WaitingWrite[]> {
  return (await open()).getAll('waiting');
}

/** Is on the disk when it ends: a device may run out of power as well. */
export async function keepWaiting(write: WaitingWrite): Promise<void> {
  const transaction = (await open()).transaction('waiting', 'readwrite', { durability: 'strict' });
  await Promise.all([transaction.store.put(write), transaction.done]);
}

export async function dropWaiting(id: string): Promise<void> {
  await (await open()).delete('waiting', id);
}

export async function keptDifferences(): Promise<Difference[]> {
  return (await open()).getAll('differences');
}

export async function keepDifference(difference: Difference): Promise<void> {
  await (await open()).put('differences', difference);
}

export async function dropDifference(id: string): Promise<void> {
  await (await open()).delete('differences', id);
}
