import { Anchor, type AnchorProps } from '@mantine/core';
import { type ReactNode, useEffect } from 'react';
import { Link, useLocation, useNavigationType } from 'react-router';
import styles from './navigation.module.css';

/** A page that is opened is read from its top; one that is gone back to is where it was. */
export function useTopOfPage(): void {
  const { pathname } = useLocation();
  const isNew = useNavigationType() === 'PUSH';
  // biome-ignore lint/correctness/useExhaustiveDependencies: each page anew.
  useEffect(() => {
    if (isNew) window.scrollTo(0, 0);
  }, [pathname, isNew]);
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
  return (
    <Anchor {...others} component={Link} className={alone ? styles.alone : className} to={to}>
      {children}
    </Anchor>
  );
}
