import { useMemo, useState } from 'react';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import type { PossibleChoice } from '../matches/matched-lots.js';
import { type Matches, useMatches } from '../matches/use-matches.js';
import { draftOfReading, emptyItem, type ItemDraft, saysSomething, scopeOf } from '../scope/scope-draft.js';
import type { SaidFields, TakenNotice } from './taken-notice.js';

/** Which possible lots are held too. */
export type HoldPossible = 'all' | 'chosen' | 'none';

/** What is being settled of a recall before it is opened or widened. */
export interface Settling {
  items: ItemDraft[];
  setItems(items: ItemDraft[]): void;
  /** Null: it says nothing that could be looked for. */
  scope: LotScope | null;
  said: SaidFields;
  setSaid(change: Partial<SaidFields>): void;
  found: Matches;
  /** Else they cannot be chosen one by one. */
  areAllListed: boolean;
  holdPossible: HoldPossible;
  setHoldPossible(choice: HoldPossible): void;
  /** Undefined unless they are chosen one by one. */
  choice: PossibleChoice | undefined;
  /** Whether it can be sent: what was chosen one by one is of the scope as it is. */
  isSettled: boolean;
  /** The choice as the service takes it. */
  heldBody(): { holdPossible: HoldPossible; heldLotIds?: string[] };
}

export function useSettling(studioId: string, taken: TakenNotice): Settling {
  const [items, setItems] = useState<ItemDraft[]>(() =>
    taken.scope === null || taken.scope.items.length === 0
      ? [emptyItem()]
      : draftOfReading({ scope: taken.scope, parts: taken.parts }),
  );
  const [said, setSaid] = useState(taken.said);
  const [wish, setHoldPossible] = useState<HoldPossible>('all');
  /** Chosen one by one, each is held unless somebody says no: what is not looked at may not slip through. */
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const scope = useMemo(() => (items.every(saysSomething) ? scopeOf(items) : null), [items]);
  const [known] = useState(() =>
    taken.matches && scope ? { written: JSON.stringify(scope), matches: taken.matches } : undefined,
  );
  const found = useMatches(studioId, scope, known);
  const { matches } = found;
  const areAllListed = !matches || matches.items.length >= matches.certainLots + matches.possibleLots;
  // What is not listed cannot be left out one by one, so all of it is held.
  const holdPossible = wish === 'chosen' && !areAllListed ? 'all' : wish;
  const choice: PossibleChoice | undefined =
    holdPossible === 'chosen'
      ? {
          isHeld: (lotId) => !left.has(lotId),
          hold: (lotId, held) => {
            const next = new Set(left);
            if (held) next.delete(lotId);
            else next.add(lotId);
            setLeft(next);
          },
        }
      : undefined;
  const heldLotIds = () =>
    (matches?.items ?? [])
      .filter(({ grade, lotId }) => grade === 'possible' && !left.has(lotId))
      .map(({ lotId }) => lotId);
  return {
    items,
    setItems,
    scope,
    said,
    setSaid: (change) => setSaid((before) => ({ ...before, ...change })),
    found,
    areAllListed,
    holdPossible,
    setHoldPossible,
    choice,
    isSettled: scope !== null && (holdPossible !== 'chosen' || found.isCurrent),
    heldBody: () => ({ holdPossible, ...(holdPossible === 'chosen' && { heldLotIds: heldLotIds() }) }),
  };
}
