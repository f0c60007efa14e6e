export class CompletedUseView {
  id: string;
  lotId: string;
  containerId: string;
  mixId: string | null;
  pieces: number;
  microlitres: number;
  /** Codes of the refusals it was used against. */
  againstRefusal: string[];
}

export class CompletionView {
  sessionId: string;
  state: 'completed';
  completedAt: string;
  version: number;
  uses: CompletedUseView[];
  /** Pieces that were opened and touched nobody. */
  wastedPieces: number;
}
