import type { KnownBy } from '../../sessions/vocabulary.js';
import type { LateUse } from './records.requests.js';

/** A use as it is being written into a form; texts are empty where nothing is said. */
export interface UseDraft {
  /** A lot on record; empty: as it is written. */
  lotId: string;
  code: string;
  codeState: 'none printed' | 'unreadable';
  useBy: string;
  knownBy: KnownBy | '';
  mixId: string;
  drops: string;
  microlitres: string;
  pieces: string;
  appliedBy: string;
  reason: string;
}

export const emptyUse: UseDraft = {
  lotId: '',
  code: '',
  codeState: 'none printed',
  useBy: '',
  knownBy: '',
  mixId: '',
  drops: '',
  microlitres: '',
  pieces: '1',
  appliedBy: '',
  reason: '',
};

/** What is sent of a use: only what was said, in the unit its product is counted in. */
export function lateUseOf(
  product: { id: string; stockForm: 'container' | 'pieces' },
  draft: UseDraft,
  { appliedAt, removedAt }: { appliedAt: string | undefined; removedAt: string | undefined },
): LateUse {
  const code = draft.code.trim();
  const useBy = draft.useBy.trim();
  const reason = draft.reason.trim();
  return {
    ...(draft.lotId !== ''
      ? { lotId: draft.lotId }
      : {
          productId: product.id,
          ...(code === '' ? { codeState: draft.codeState } : { code }),
          ...(useBy !== '' && { useBy }),
        }),
    knownBy: draft.knownBy === '' ? 'typed' : draft.knownBy,
    ...(draft.mixId !== '' && { mixId: draft.mixId }),
    ...(product.stockForm === 'pieces'
      ? { pieces: Number(draft.pieces) }
      : draft.drops !== ''
        ? { drops: Number(draft.drops) }
        : draft.microlitres !== '' && { microlitres: Number(draft.microlitres) }),
    ...(appliedAt !== undefined && { appliedAt }),
    ...(removedAt !== undefined && { removedAt }),
    ...(draft.appliedBy !== '' && { appliedBy: draft.appliedBy }),
    ...(reason !== '' && { reason }),
  };
}
