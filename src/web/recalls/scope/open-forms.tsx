import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';

/** How many forms are open in which something may be typed that is not taken over yet. */
interface OpenForms {
  count: number;
  change(by: 1 | -1): void;
}

const Context = createContext<OpenForms>({ count: 0, change: () => undefined });

/** Around a form to be sent and the smaller forms that feed it. */
export function WithOpenForms({ children }: { children: ReactNode }) {
  const [count, setCount] = useState(0);
  const forms = useMemo(
    () => ({ count, change: (by: 1 | -1) => setCount((before) => before + by) }),
    [count],
  );
  return <Context value={forms}>{children}</Context>;
}

/** A form that is open as long as it is shown. */
export function useOpenForm(): void {
  const { change } = useContext(Context);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is opened once.
  useEffect(() => {
    change(1);
    return () => change(-1);
  }, []);
}

/** Whether something may be typed that would be left out. */
export function useHasOpenForms(): boolean {
  return useContext(Context).count > 0;
}
