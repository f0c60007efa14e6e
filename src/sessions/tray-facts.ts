import type { OnKitList } from './on-kit-list.js';
import { type TouchUpDays, touchUpExpectedBy } from './touch-up-window.js';
import type { TrayFacts } from './tray-rules.js';
import type { TrayThing } from './tray-thing.js';
import type { VisitKind } from './vocabulary.js';

/** What is known when a scan has been taken for one thing. */
export interface TakenScan {
  thing: TrayThing;
  /** Everything of the products named, the thing itself among it. */
  things: readonly TrayThing[];
  /** Lines on any tray. */
  lines: readonly { sessionId: string; containerId: string; lotId: string }[];
  /** Whether the container itself was named, by its label or by picking it; else only its lot was. */
  containerNamed: boolean;
  session: { id: string; artistId: string; visitKind: VisitKind; touchUpDays: TouchUpDays };
  symbolUseBy: string | null;
  symbolIsOwnLabel: boolean;
  serial: string | null;
  /** Whether a piece of that serial lies on a tray or was used. */
  serialKnown: boolean;
  /** What the artist answered to "another one?". */
  another: boolean;
  onKitList: OnKitList;
  /** The studio's local day of the scan. */
  day: string;
}

/**
 * Sorts what is known of a scan into the facts of its admission: the others are the other containers of the same product,
 * of the lines only those on this tray count that the same symbol could have put there – of pieces those of the lot, since a
 * maker's symbol is the same on all its boxes – and a serial names a piece but never a bottle.
 */
export function trayFacts(scan: TakenScan): TrayFacts {
  const { thing, things, lines, session, serial, symbolUseBy, another } = scan;
  const byLot = thing.stockForm === 'pieces' && !scan.containerNamed;
  return {
    thing,
    others: things.filter(
      ({ productId, containerId }) => productId === thing.productId && containerId !== thing.containerId,
    ),
    symbolUseBy,
    symbolIsOwnLabel: scan.symbolIsOwnLabel,
    serialTaken: scan.serialKnown && serial !== null && thing.stockForm === 'pieces',
    linesOnTray: lines.filter(
      (line) =>
        line.sessionId === session.id &&
        (byLot ? line.lotId === thing.lotId : line.containerId === thing.containerId),
    ).length,
    another,
    hasSerial: serial !== null,
    onKitList: scan.onKitList,
    artistId: session.artistId,
    touchUpBy: touchUpExpectedBy(session.visitKind, scan.day, session.touchUpDays),
  };
}
