/**
 * Calls at once, and again after a while if it was asked for meanwhile: ten thousand asks in a minute become a few calls.
 * @returns ask: asks for a call; end: nothing is called any more
 */
export function seldom(call: () => void, milliseconds: number): { ask(): void; end(): void } {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let isAskedAgain = false;
  const run = () => {
    isAskedAgain = false;
    waiting = setTimeout(() => {
      waiting = undefined;
      if (isAskedAgain) run();
    }, milliseconds);
    call();
  };
  return {
    ask: () => {
      if (waiting === undefined) run();
      else isAskedAgain = true;
    },
    end: () => clearTimeout(waiting),
  };
}
