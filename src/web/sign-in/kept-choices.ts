/** What is chosen for a device, whoever uses it: nothing in it is about a person. */
const names = ['lotward-language', 'lotward-brightness', 'lotward-device'];

/**
 * Signing out clears all that the browser keeps of the app. What was chosen for the device is put back afterwards, so that
 * it speaks the same language to whoever signs in next, and is as bright.
 */
export async function withChoicesKept<Result>(clear: () => Promise<Result>): Promise<Result> {
  const kept = names.map((name) => [name, read(name)] as const);
  const result = await clear();
  for (const [name, value] of kept) if (value !== null) write(name, value);
  return result;
}

function read(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function write(name: string, value: string): void {
  try {
    localStorage.setItem(name, value);
  } catch {
    // A browser that keeps nothing is asked again each time.
  }
}
