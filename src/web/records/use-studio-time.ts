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

/**
 * @param initial instant it begins with, and follows until somebody writes; undefined: the field is empty. What was not
 * touched keeps its seconds, and the one of two that it is
 */
export function useStudioTime(initial: string | undefined, timeZone: string): WrittenStudioTime {
  const [written, setWritten] = useState<{ local: string; which: Which | undefined }>();
  const begun = initial === undefined ? '' : shownInStudio(initial, timeZone);
  const local = written?.local ?? begun;
  const means = studioTime(local, timeZone);
  return {
    local,
    write: (text) => setWritten({ local: text, which: undefined }),
    means,
    which: written ? written.which : whichOf(means, initial),
    choose: (which) => setWritten({ local, which }),
    instant: written ? instantOf(means, written.which) : initial,
    timeZone,
  };
}

function instantOf(means: StudioTime | null, which: Which | undefined): string | undefined {
  if (means?.kind === 'once') return means.instant;
  return means?.kind === 'twice' && which !== undefined ? means[which].instant : undefined;
}

function whichOf(means: StudioTime | null, instant: string | undefined): Which | undefined {
  if (means?.kind !== 'twice' || instant === undefined) return undefined;
  return instant < means.second.instant ? 'first' : 'second';
}
