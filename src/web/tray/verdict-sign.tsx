import type { Verdict } from '../../sessions/vocabulary.js';

/** One outline for each verdict, so that it is told apart without its colour. */
const outlines: Record<Verdict, string> = {
  admitted: 'M24 4a20 20 0 1 1 0 40a20 20 0 1 1 0-40z',
  warned: 'M24 4L46 43H2z',
  refused: 'M5 5H43V43H5z',
  question: 'M24 2L46 24L24 46L2 24z',
};

const strokes: Record<Verdict, string> = {
  admitted: 'M14 25l7 7l14-15',
  warned: 'M24 18v12M24 36v.5',
  refused: 'M15 15l18 18M33 15l-18 18',
  question: 'M18.500 19.500a5.500 5.500 0 1 1 8 5c-2 1-2.500 2-2.500 4M24 34v.5',
};

/** The shape of a verdict in the colour of the text around it, its inside in that of the ground; its word stands beside it. */
export function VerdictSign({ verdict, ground }: { verdict: Verdict; ground: string }) {
  return (
    <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false">
      <path d={outlines[verdict]} fill="currentColor" />
      <path
        d={strokes[verdict]}
        fill="none"
        stroke={ground}
        strokeWidth="5"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
