import type { TraceUseView } from '../../../sessions/trace.views.js';

export type TraceNodeKind = 'lot' | 'blend' | 'container' | 'mix' | 'session';

export interface TraceNode {
  /** Its kind and the id of the thing. */
  key: string;
  kind: TraceNodeKind;
  /** Of the lot, container, mix or session. */
  id: string;
  /** The session of a mix; of anything else its own id. */
  sessionId: string | null;
  title: string;
  about: string;
}

export interface TraceEdge {
  from: string;
  to: string;
  /** Everything behind it was recorded by mistake and taken back. */
  isReversed: boolean;
}

export interface TraceNodes {
  nodes: TraceNode[];
  edges: TraceEdge[];
}

type Use = Pick<
  TraceUseView,
  | 'sessionId'
  | 'clientReference'
  | 'occurredAt'
  | 'lotId'
  | 'lotCode'
  | 'containerId'
  | 'productName'
  | 'shade'
  | 'mixId'
  | 'reversedAt'
  | 'lots'
>;

/** The uses of the first sessions, in the order of the answer. */
export function usesOfFirstSessions<Of extends Pick<Use, 'sessionId'>>(
  uses: readonly Of[],
  mostSessions: number,
): { uses: Of[]; sessions: number } {
  const drawn = new Set<string>();
  for (const { sessionId } of uses) if (drawn.size < mostSessions) drawn.add(sessionId);
  return { uses: uses.filter(({ sessionId }) => drawn.has(sessionId)), sessions: drawn.size };
}

/**
 * What a trace is made of: lots, house blends, what was taken in hand, mixes and sessions, each once, and how one led to
 * another. A lot that was poured into a blend at any depth leads to the blend that was taken in hand.
 */
export function traceNodes(uses: readonly Use[]): TraceNodes {
  const nodes = new Map<string, TraceNode>();
  const edges = new Map<string, TraceEdge>();
  const add = (node: TraceNode) => {
    if (!nodes.has(node.key)) nodes.set(node.key, node);
    return node.key;
  };
  for (const use of uses) {
    const isReversed = use.reversedAt !== null;
    const lead = (from: string, to: string) => {
      const key = `${from} ${to}`;
      const known = edges.get(key);
      edges.set(key, { from, to, isReversed: isReversed && (known?.isReversed ?? true) });
    };
    const parents = use.lots.filter(({ lotId }) => lotId !== use.lotId);
    const name = (productName: string, shade: string | null) =>
      shade === null ? productName : `${productName} ${shade}`;
    const isBlend = parents.length > 0;
    // It may have been met before, as a part of another blend.
    const met = nodes.get(`lot ${use.lotId}`);
    if (met && isBlend) met.kind = 'blend';
    const inHand = add({
      ...{ key: `lot ${use.lotId}`, kind: isBlend ? 'blend' : 'lot', id: use.lotId },
      ...{ sessionId: null, title: use.lotCode ?? '', about: name(use.productName, use.shade) },
    });
    for (const parent of parents) {
      const key = add({
        ...{ key: `lot ${parent.lotId}`, kind: 'lot', id: parent.lotId, sessionId: null },
        ...{ title: parent.lotCode ?? '', about: name(parent.productName, parent.shade) },
      });
      lead(key, inHand);
    }
    const container = add({
      ...{ key: `container ${use.containerId}`, kind: 'container', id: use.containerId },
      ...{ sessionId: null, title: '', about: use.lotCode ?? '' },
    });
    const session = add({
      ...{ key: `session ${use.sessionId}`, kind: 'session', id: use.sessionId },
      ...{ sessionId: use.sessionId, title: use.clientReference, about: use.occurredAt },
    });
    lead(inHand, container);
    if (use.mixId === null) {
      lead(container, session);
      continue;
    }
    const mix = add({
      ...{ key: `mix ${use.mixId}`, kind: 'mix', id: use.mixId, sessionId: use.sessionId },
      ...{ title: '', about: use.clientReference },
    });
    lead(container, mix);
    lead(mix, session);
  }
  return { nodes: [...nodes.values()], edges: [...edges.values()] };
}
