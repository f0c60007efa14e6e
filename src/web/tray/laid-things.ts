import type { TrayLineView } from '../../sessions/tray.views.js';

/** A bottle, or the pieces of one box, as they lie on the tray. */
export interface LaidThing
  extends Pick<
    TrayLineView,
    | 'containerId'
    | 'lotId'
    | 'productId'
    | 'label'
    | 'labelCode'
    | 'lotCode'
    | 'stockForm'
    | 'isPigment'
    | 'knownBy'
    | 'refusedNow'
  > {
  /** All pieces of it together; 0 for a bottle. */
  pieces: number;
  /** The latest last: that one is taken off first. */
  lineIds: string[];
}

/** What lies on a tray, in the order in which it came there first, with the running total of each. */
export function laidThings(lines: readonly TrayLineView[]): LaidThing[] {
  const things = new Map<string, LaidThing>();
  for (const line of lines) {
    if (line.state !== 'on tray') continue;
    const thing = things.get(line.containerId);
    if (thing) {
      thing.pieces += line.pieces;
      thing.lineIds.push(line.id);
      continue;
    }
    const { containerId, lotId, productId, label, labelCode, lotCode, stockForm, isPigment } = line;
    const { knownBy, refusedNow, pieces } = line;
    things.set(containerId, {
      ...{ containerId, lotId, productId, label, labelCode, lotCode, stockForm, isPigment },
      ...{ knownBy, refusedNow, pieces, lineIds: [line.id] },
    });
  }
  return [...things.values()];
}
