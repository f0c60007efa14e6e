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

export interface Point {
  x: number;
  y: number;
}

export interface DrawnEdge extends TraceEdge {
  /**
   * From the middle of the right side of one node to that of the left side of the other. Between them it enters and leaves
   * each layer that it passes, where room is kept for it, so that it runs behind no node.
   */
  points: Point[];
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

/** What takes room in a layer: a node, or the way of an edge that passes the layer. */
interface Slot {
  key: string;
  node: TraceNode | null;
}

/**
 * Lays a trace out in layers from left to right. Each node stands once, right of all that leads to it; what stands in a
 * layer stands below each other in an order that keeps lines short (the barycentre heuristic of Sugiyama, Tagawa and Toda,
 * 1981 [M]), and never on each other.
 */
export function traceGraph({ nodes, edges }: TraceNodes, sizes: GraphSizes): TraceGraph {
  const layersOfNodes = layersOf(nodes, edges);
  const layerOf = new Map(layersOfNodes.flatMap((layer, at) => layer.map(({ key }) => [key, at] as const)));
  const ways = edges.map((edge) => wayOf(edge, layerOf));
  const steps = ways.flatMap((keys) => keys.slice(1).map((to, at) => ({ from: keys[at] ?? '', to })));
  const layers = inOrder(
    layersOfNodes.map((layer, at): Slot[] => [
      ...layer.map((node) => ({ key: node.key, node })),
      ...ways.flatMap((keys) =>
        keys.filter((key) => key.endsWith(passing(at))).map((key) => ({ key, node: null })),
      ),
    ]),
    steps,
  );
  const { nodeWidth, nodeHeight, acrossGap, downGap } = sizes;
  const roomOf = ({ node }: Slot) => (node === null ? wayHeight : nodeHeight);
  const heightOf = (layer: readonly Slot[]) =>
    Math.max(
      0,
      layer.reduce((sum, slot) => sum + roomOf(slot) + downGap, -downGap),
    );
  const height = Math.max(0, ...layers.map(heightOf));
  const corners = new Map<string, Point>();
  for (const [at, layer] of layers.entries()) {
    let y = (height - heightOf(layer)) / 2;
    for (const slot of layer) {
      corners.set(slot.key, { x: at * (nodeWidth + acrossGap), y });
      y += roomOf(slot) + downGap;
    }
  }
  const cornerOf = (key: string): Point => corners.get(key) ?? { x: 0, y: 0 };
  return {
    nodes: layers.flatMap((layer, at) =>
      layer.flatMap(({ key, node }): DrawnNode[] =>
        node === null ? [] : [{ ...node, layer: at, ...cornerOf(key) }],
      ),
    ),
    edges: edges.map((edge, index): DrawnEdge => {
      const way = ways[index] ?? [];
      const points = way.flatMap((key, at): Point[] => {
        const { x, y } = cornerOf(key);
        const isEnd = at === 0 || at === way.length - 1;
        const middle = y + (isEnd ? nodeHeight : wayHeight) / 2;
        const left = { x, y: middle };
        const right = { x: x + nodeWidth, y: middle };
        return at === 0 ? [right] : isEnd ? [left] : [left, right];
      });
      return { ...edge, points };
    }),
    width: Math.max(0, layers.length * (nodeWidth + acrossGap) - acrossGap),
    height,
  };
}

/** So much room is kept for a line that passes a layer. */
const wayHeight = 8;
const passing = (layer: number) => ` passing ${layer}`;

/** What an edge goes by: its first node, a place in each layer it passes, its last node. */
function wayOf({ from, to }: TraceEdge, layerOf: ReadonlyMap<string, number>): string[] {
  const first = layerOf.get(from) ?? 0;
  const between = Math.max(0, (layerOf.get(to) ?? 0) - first - 1);
  return [from, ...Array.from({ length: between }, (_, at) => `${from} ${to}${passing(first + 1 + at)}`), to];
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
function inOrder(layers: readonly Slot[][], edges: readonly Pick<TraceEdge, 'from' | 'to'>[]): Slot[][] {
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
