import type { Verdict } from '../../sessions/vocabulary.js';
import { verdictTones } from './verdict-tones.js';

const loudness = 0.15;
/** Ends of a tone without a click. */
const fadeSeconds = 0.01;
const pauseSeconds = 0.04;

/** Sounds verdicts, made by the browser itself. A browser lets it sound only after the page was touched once. */
export class Sounder {
  private context: AudioContext | undefined;

  async sound(verdict: Verdict): Promise<void> {
    this.context ??= new AudioContext();
    const { context } = this;
    await context.resume();
    let start = context.currentTime;
    for (const { hertz, seconds } of verdictTones[verdict]) {
      const tone = new OscillatorNode(context, { frequency: hertz });
      const volume = new GainNode(context, { gain: 0 });
      volume.gain.setValueAtTime(0, start);
      volume.gain.linearRampToValueAtTime(loudness, start + fadeSeconds);
      volume.gain.setValueAtTime(loudness, start + seconds - fadeSeconds);
      volume.gain.linearRampToValueAtTime(0, start + seconds);
      tone.connect(volume).connect(context.destination);
      tone.start(start);
      tone.stop(start + seconds);
      start += seconds + pauseSeconds;
    }
  }

  stop(): void {
    void this.context?.close();
    this.context = undefined;
  }
}
