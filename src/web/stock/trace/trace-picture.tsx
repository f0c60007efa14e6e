import { Link } from 'react-router';
import type { TraceUseView } from '../../../sessions/trace.views.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { writtenLabel } from '../amounts.js';
import { type DrawnEdge, type DrawnNode, traceGraph } from './trace-graph.js';
import { traceNodes, usesOfFirstSessions } from './trace-nodes.js';
import styles from './trace-picture.module.css';

/** More than this is no picture any more; the table has them all. */
const mostSessions = 24;
const sizes = { nodeWidth: 172, nodeHeight: 52, acrossGap: 56, downGap: 12 };
const edge = 4;
/** So many letters fit into a box. */
const lettersInBox = 21;

/** The way from lots to sessions, drawn. Each box is a link; the table beside says the same. */
export function TracePicture({
  studioId,
  uses,
  allSessions,
  labels,
}: {
  studioId: string;
  uses: readonly TraceUseView[];
  /** How many sessions there are in all of which a use stands. */
  allSessions: number;
  /** Codes of labels by container, as far as they are known. */
  labels: ReadonlyMap<string, string>;
}) {
  const texts = useTexts();
  const first = usesOfFirstSessions(uses, mostSessions);
  const { nodes, edges, width, height } = traceGraph(traceNodes(first.uses), sizes);
  const standing = first.uses.filter(({ reversedAt }) => reversedAt === null);
  const undrawn = allSessions - new Set(standing.map(({ sessionId }) => sessionId)).size;
  return (
    <>
      {undrawn > 0 && (
        <p>
          {texts.trace.drawn(first.sessions)} {texts.trace.more(undrawn)}
        </p>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too. */}
      <section className={styles.scroll} aria-label={texts.trace.graphLabel} tabIndex={0}>
        <svg
          className={styles.picture}
          width={width + 2 * edge}
          height={height + 2 * edge}
          viewBox={`${-edge} ${-edge} ${width + 2 * edge} ${height + 2 * edge}`}
        >
          <title>{texts.trace.graph}</title>
          {edges.map((one) => (
            <path
              key={`${one.from} ${one.to}`}
              d={pathBetween(one)}
              className={styles.edge}
              data-reversed={one.isReversed || undefined}
            />
          ))}
          {nodes.map((node) => (
            <Node key={node.key} studioId={studioId} node={node} label={labels.get(node.id)} />
          ))}
        </svg>
      </section>
    </>
  );
}

function Node({ studioId, node, label }: { studioId: string; node: DrawnNode; label: string | undefined }) {
  const texts = useTexts();
  const { kind, x, y } = node;
  const title = label === undefined ? node.title : writtenLabel(label);
  const at = useStudioInstants(studioId);
  const about = kind === 'session' ? at(node.about) : node.about;
  const [above, below] = title === '' ? [texts.trace.kinds[kind], about] : [title, about];
  return (
    <Link
      to={pathOfNode(studioId, node)}
      className={styles.node ?? ''}
      data-kind={kind}
      // Holds what is read, so that who speaks to the page can say it (WCAG 2.2, 2.5.3).
      aria-label={`${texts.trace.kinds[kind]}, ${cut(above)} ${cut(below)}`}
    >
      <rect x={x} y={y} width={sizes.nodeWidth} height={sizes.nodeHeight} rx={cornerOf[kind]} />
      <text x={x + sizes.nodeWidth / 2} y={y + 22} className={styles.title}>
        {cut(above)}
      </text>{' '}
      <text x={x + sizes.nodeWidth / 2} y={y + 40} className={styles.about}>
        {cut(below)}
      </text>
    </Link>
  );
}

/** Each kind of thing has a form of its own. */
const cornerOf: Record<DrawnNode['kind'], number> = { lot: 2, blend: 2, container: 12, mix: 26, session: 6 };

function pathOfNode(studioId: string, { kind, id, sessionId }: DrawnNode): string {
  if (sessionId !== null) return pathOf({ studioId, area: 'records' }, 'sessions', sessionId);
  return pathOf({ studioId, area: 'stock' }, kind === 'container' ? 'containers' : 'lots', id);
}

/** Bent between layers, straight where it passes one. */
function pathBetween({ points: [start, ...others] }: DrawnEdge): string {
  if (!start) return '';
  let last = start;
  let path = `M${start.x} ${start.y}`;
  for (const [index, point] of others.entries()) {
    const bend = (point.x - last.x) / 2;
    path +=
      index % 2 === 1
        ? `L${point.x} ${point.y}`
        : `C${last.x + bend} ${last.y} ${point.x - bend} ${point.y} ${point.x} ${point.y}`;
    last = point;
  }
  return path;
}

function cut(text: string): string {
  const letters = [...text];
  return letters.length <= lettersInBox ? text : `${letters.slice(0, lettersInBox - 1).join('')}…`;
}
