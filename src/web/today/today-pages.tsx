import { type ComponentType, lazy } from 'react';
import { Route, Routes, useParams } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { DayPage } from './day-page.js';

/** Trays bring the rules by which scans are judged on this device: they are loaded when one is opened. */
const TrayPage = lazy(async () => ({ default: (await import('../tray/tray-page.js')).TrayPage }));
const CompletionPage = lazy(async () => ({
  default: (await import('../tray/completion/completion-page.js')).CompletionPage,
}));

/** What is to be done today, and the trays that are laid. */
export function TodayPages({ standing }: { standing: StandingView }) {
  return (
    <Routes>
      <Route index element={<DayPage standing={standing} />} />
      <Route path="trays/:sessionId" element={<OfSession standing={standing} Open={TrayPage} />} />
      <Route
        path="trays/:sessionId/completion"
        element={<OfSession standing={standing} Open={CompletionPage} />}
      />
      <Route path="*" element={<NoSuchPage />} />
    </Routes>
  );
}

function OfSession({
  standing,
  Open,
}: {
  standing: StandingView;
  Open: ComponentType<{ standing: StandingView; sessionId: string }>;
}) {
  const { sessionId = '' } = useParams();
  return <Open key={sessionId} standing={standing} sessionId={sessionId} />;
}
