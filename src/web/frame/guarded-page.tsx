import type { ReactNode } from 'react';
import type { Permission } from '../../identity/permissions.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { useTexts } from '../texts/texts.js';
import { Page } from './page.js';

/** A page of an area that not everybody of the area has a part in. */
export function GuardedPage({
  standing: { studioName, permissions },
  needs,
  children,
}: {
  standing: StandingView;
  needs: Permission;
  children: ReactNode;
}) {
  const texts = useTexts();
  if (permissions.includes(needs)) return children;
  return <Page above={studioName} title={texts.app.notYours} lead={texts.app.notYoursDetail} />;
}
