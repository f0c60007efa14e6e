import type { TraceEdge, TraceNode, TraceNodeKind, TraceNodes } from './trace-nodes.js';

/** Sizes in the units of the picture. */
export interface GraphSizes {
  nodeWidth: number;
  nodeHeight: number;
  /** Between layers, and between nodes of one layer. */
  acrossGap: number;
  downGap: number;
}

export interface DrawnNode extends TraceNode {
  layer: number;
  /** Its upper left corner. */
  x: number;
  y: number;
}

export interface DrawnEdge extends TraceEdge {
  /** From the middle of the right side of one node to that of the left side of the other. */
  fromX: number;
  fromY: number;
  toX: number;
  toY: number;
}

export interface TraceGraph {
  nodes: DrawnNode[];
  edges: DrawnEdge[];
  width: number;
  height: number;
}

/** Whatever its own way is, a container stands right of every lot, a mix right of every container, and so on. */
const stages: Record<TraceNodeKind, number> = { lot: 0, blend: 0, container: 1, mix: 2, session: 3 };
const sweeps = 4;

/**
 * Lays a trace out in layers from left to right. Each node stands once, right of all that leads to it; nodes of a layer
 * stand below each other in an order that keeps lines short (the barycentre heuristic of Sugiyama, Tagawa and Toda, 1981
 * [S]), and never on each other.
 */
export function traceGraph({ nodes, edges }: TraceNodes, sizes: GraphSizes): TraceGraph {
  const layers = inOrder(layersOf(nodes, edges), edges);
  const { nodeWidth, nodeHeight, acrossGap, downGap } = sizes;
  const heightOf = (count: number) => Math.max(0, count * (nodeHeight + downGap) - downGap);
  const height = Math.max(0, ...layers.map((layer) => heightOf(layer.length)));
  const drawn = layers.flatMap((layer, number) =>
    layer.map(
      (node, index): DrawnNode => ({
        ...node,
        layer: number,
        x: number * (nodeWidth + acrossGap),
        y: (height - heightOf(layer.length)) / 2 + index * (nodeHeight + downGap),
      }),
    ),
  );
  const byKey = new Map(drawn.map((node) => [node.key, node]));
  return {
    nodes: drawn,
    edges: edges.flatMap((edge): DrawnEdge[] => {
      const from = byKey.get(edge.from);
      const to = byKey.get(edge.to);
      if (!from || !to) return [];
      const middle = nodeHeight / 2;
      return [{ ...edge, fromX: from.x + nodeWidth, fromY: from.y + middle, toX: to.x, toY: to.y + middle }];
    }),
    width: Math.max(0, layers.length * (nodeWidth + acrossGap) - acrossGap),
    height,
  };
}

/** Stage by stage; within a stage a node stands one layer after the last that leads to it. */
function layersOf(nodes: readonly TraceNode[], edges: readonly TraceEdge[]): TraceNode[][] {
  const layers: TraceNode[][] = [];
  const before = leadingTo(edges);
  for (const stage of new Set(Object.values(stages))) {
    const ofStage = nodes.filter(({ kind }) => stages[kind] === stage);
    const keys = new Set(ofStage.map(({ key }) => key));
    const depth = new Map<string, number>();
    const depthOf = (key: string): number => {
      const known = depth.get(key);
      if (known !== undefined) return known;
      // Blends are made of earlier lots, so nothing leads back; were it so, the way would end here.
      depth.set(key, 0);
      const within = (before.get(key) ?? []).filter((one) => keys.has(one));
      const found = within.length === 0 ? 0 : 1 + Math.max(...within.map(depthOf));
      depth.set(key, found);
      return found;
    };
    const own: TraceNode[][] = [];
    for (const node of ofStage) {
      const at = depthOf(node.key);
      own[at] = [...(own[at] ?? []), node];
    }
    layers.push(...own.filter((layer) => layer !== undefined));
  }
  return layers;
}

/** Each node near the middle of what leads to it, then of what it leads to, and so on. */
function inOrder(layers: readonly TraceNode[][], edges: readonly TraceEdge[]): TraceNode[][] {
  const before = leadingTo(edges);
  const after = leadingTo(edges.map(({ from, to }) => ({ from: to, to: from })));
  let ordered = layers.map((layer) => [...layer]);
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    const neighbours = sweep % 2 === 0 ? before : after;
    const places = new Map<string, number>();
    const sorted = (sweep % 2 === 0 ? ordered : [...ordered].reverse()).map((layer) => {
      const weights = new Map(
        layer.map(({ key }, index) => [key, middleOf(neighbours.get(key), places) ?? index]),
      );
      const result = [...layer].sort(
        (one, other) => (weights.get(one.key) ?? 0) - (weights.get(other.key) ?? 0),
      );
      for (const [index, { key }] of result.entries()) places.set(key, index);
      return result;
    });
    ordered = sweep % 2 === 0 ? sorted : sorted.reverse();
  }
  return ordered;
}

function middleOf(
  keys: readonly string[] | undefined,
  places: ReadonlyMap<string, number>,
): number | undefined {
  const known = (keys ?? []).flatMap((key) => places.get(key) ?? []);
  return known.length === 0 ? undefined : known.reduce((sum, place) => sum + place, 0) / known.length;
}

function leadingTo(edges: readonly Pick<TraceEdge, 'from' | 'to'>[]): Map<string, string[]> {
  const leading = new Map<string, string[]>();
  for (const { from, to } of edges) {
    const known = leading.get(to);
    if (known) known.push(from);
    else leading.set(to, [from]);
  }
  return leading;
}
