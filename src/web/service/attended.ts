/** Whoever did something so lately is taken to be there. */
const lately = 60_000;
/** What somebody does at a page: to read on, to write, to choose, to come back to it. */
const doings = ['pointerdown', 'pointermove', 'keydown', 'wheel', 'touchmove', 'visibilitychange'] as const;

let lastDone = Date.now();

export function noteDoing(): void {
  lastDone = Date.now();
}

/** Whether somebody did something at this page within the last minute; what is asked otherwise, it asks by itself. */
export function isAttended(): boolean {
  return Date.now() - lastDone < lately;
}

for (const doing of doings) {
  globalThis.addEventListener?.(
    doing,
    () => {
      if (document.visibilityState === 'visible') noteDoing();
    },
    { capture: true, passive: true },
  );
}
