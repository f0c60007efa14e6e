import { Anchor, type AnchorProps } from '@mantine/core';
import { type MouseEvent, type ReactNode, useSyncExternalStore } from 'react';
import styles from './navigation.module.css';

const listeners = new Set<() => void>();

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('popstate', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('popstate', listener);
  };
}

/** The path of the page that is open. */
export function usePath(): string {
  return useSyncExternalStore(subscribe, () => window.location.pathname);
}

/** Opens a page of the app; with `replace`, going back does not lead to the one that was open. */
export function openPage(path: string, { replace = false } = {}): void {
  if (replace) window.history.replaceState(null, '', path);
  else window.history.pushState(null, '', path);
  if (!replace) window.scrollTo(0, 0);
  for (const listener of listeners) listener();
}

/** A link to a page of the app; `alone`, when it stands in no sentence and is pressed like a button. */
export function PageLink({
  to,
  alone = false,
  className,
  children,
  ...others
}: {
  to: string;
  alone?: boolean;
  children: ReactNode;
  'aria-current'?: 'page';
  className?: string;
} & AnchorProps) {
  const follow = (event: MouseEvent) => {
    const elsewhere = event.metaKey || event.ctrlKey || event.shiftKey || event.altKey || event.button !== 0;
    if (elsewhere || event.defaultPrevented) return;
    event.preventDefault();
    openPage(to);
  };
  return (
    <Anchor {...others} className={alone ? styles.alone : className} href={to} onClick={follow}>
      {children}
    </Anchor>
  );
}
