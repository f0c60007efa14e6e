import type { Verdict } from '../../sessions/vocabulary.js';

/** One note: how high in Hz, how long in seconds. */
interface Tone {
  hertz: number;
  seconds: number;
}

/** Told apart by how many and which way they go, not only by how high: up is good, down is not, even is a question. */
export const verdictTones: Record<Verdict, readonly Tone[]> = {
  admitted: [
    { hertz: 660, seconds: 0.07 },
    { hertz: 990, seconds: 0.11 },
  ],
  warned: [
    { hertz: 660, seconds: 0.11 },
    { hertz: 495, seconds: 0.16 },
  ],
  refused: [
    { hertz: 330, seconds: 0.12 },
    { hertz: 247, seconds: 0.12 },
    { hertz: 185, seconds: 0.25 },
  ],
  question: [
    { hertz: 660, seconds: 0.09 },
    { hertz: 660, seconds: 0.09 },
  ],
};
