import type { ReceiptView } from '../../stock/receiving.views.js';
import { Events } from '../service/events.js';
import type { DeliveryBody } from './handed-in-line.js';
import { changedLine, type LineDraft } from './line-draft.js';

export interface DeliveryDraft {
  origin: DeliveryBody['origin'];
  supplierId: string;
  reference: string;
  orderedOn: string;
  /** Which of those that are expected it is; empty: none of them. */
  expectedDeliveryId: string;
  /** Empty: the first place there is. */
  placeId: string;
  /** The latest first. */
  lines: LineDraft[];
  /** Lines that were taken out, the latest first: each can be brought back. */
  takenOut: LineDraft[];
  /** Scans that were not read yet, in their order. */
  unread: string[];
  /** What became of it; undefined as long as it is put together. */
  receipt: ReceiptView | undefined;
}

export const emptyDelivery: DeliveryDraft = {
  origin: 'purchase',
  supplierId: '',
  reference: '',
  orderedOn: '',
  expectedDeliveryId: '',
  placeId: '',
  lines: [],
  takenOut: [],
  unread: [],
  receipt: undefined,
};

/**
 * A delivery that is being put together, in the memory of the window: another page, an error or a sign-in that ran out
 * lose nothing of it. It is kept in no storage.
 */
export class KeptDelivery {
  private draft = emptyDelivery;
  private readonly listeners = new Set<() => void>();
  /** Serial numbers that were scanned, by the key of their line. */
  readonly serials = new Map<string, string[]>();
  /** Its id and instant stay the same however often the same content is sent. */
  readonly events = new Events();

  readonly read = (): DeliveryDraft => this.draft;

  readonly listen = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  change(change: Partial<DeliveryDraft> | ((draft: DeliveryDraft) => Partial<DeliveryDraft>)): void {
    this.draft = { ...this.draft, ...(typeof change === 'function' ? change(this.draft) : change) };
    for (const listener of this.listeners) listener();
  }

  changeLine(key: string, change: Partial<LineDraft>): void {
    this.change(({ lines }) => ({
      lines: lines.map((line) => (line.key === key ? changedLine(line, change) : line)),
    }));
  }

  /** Puts a line in front, as the one that was handled last. */
  putInFront(line: LineDraft): void {
    this.change(({ lines }) => ({ lines: [line, ...lines.filter(({ key }) => key !== line.key)] }));
  }

  takeOut(key: string): void {
    this.change(({ lines, takenOut }) => ({
      lines: lines.filter((line) => line.key !== key),
      takenOut: [...lines.filter((line) => line.key === key), ...takenOut],
    }));
  }

  bringBack(key: string): void {
    this.change(({ lines, takenOut }) => ({
      lines: [...takenOut.filter((line) => line.key === key), ...lines],
      takenOut: takenOut.filter((line) => line.key !== key),
    }));
  }

  startAnew(): void {
    this.serials.clear();
    this.events.renew();
    this.change({ ...emptyDelivery, placeId: this.draft.placeId });
  }
}

const kept = new Map<string, KeptDelivery>();

/** The delivery that one account puts together in one studio; those of whoever used this window before are forgotten. */
export function keptDelivery(accountId: string, studioId: string): KeptDelivery {
  const place = `${accountId} ${studioId}`;
  const known = kept.get(place);
  if (known) return known;
  for (const other of kept.keys()) if (!other.startsWith(`${accountId} `)) kept.delete(other);
  const made = new KeptDelivery();
  kept.set(place, made);
  return made;
}
