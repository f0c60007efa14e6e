import { useState } from 'react';
import { type StudioTime, shownInStudio, studioTime } from './studio-time.js';

type Which = 'first' | 'second';

/** A time of the studio that is being written into a form. */
export interface WrittenStudioTime {
  local: string;
  write(local: string): void;
  means: StudioTime | null;
  /** Which of the two, where the time comes twice; undefined: not said yet. */
  which: Which | undefined;
  choose(which: Which): void;
  /** Undefined as long as it is not known which instant is meant. */
  instant: string | undefined;
  timeZone: string;
}

/** @param initial instant it begins with; undefined: the field is empty */
export function useStudioTime(initial: string | undefined, timeZone: string): WrittenStudioTime {
  const [local, setLocal] = useState(initial === undefined ? '' : shownInStudio(initial, timeZone));
  const [which, setWhich] = useState<Which>();
  /** What was not touched keeps its seconds, and the one of two that it is. */
  const [untouched, setUntouched] = useState(initial);
  const means = studioTime(local, timeZone);
  return {
    local,
    write: (text) => {
      setUntouched(undefined);
      setWhich(undefined);
      setLocal(text);
    },
    means,
    which: untouched === undefined ? which : whichOf(means, untouched),
    choose: (chosen) => {
      setUntouched(undefined);
      setWhich(chosen);
    },
    instant: untouched ?? instantOf(means, which),
    timeZone,
  };
}

function instantOf(means: StudioTime | null, which: Which | undefined): string | undefined {
  if (means?.kind === 'once') return means.instant;
  return means?.kind === 'twice' && which !== undefined ? means[which].instant : undefined;
}

function whichOf(means: StudioTime | null, instant: string): Which | undefined {
  if (means?.kind !== 'twice') return undefined;
  return instant < means.second.instant ? 'first' : 'second';
}
