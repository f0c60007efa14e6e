import { Route, Routes, useParams } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { CompletionPage } from '../tray/completion/completion-page.js';
import { TrayPage } from '../tray/tray-page.js';
import { DayPage } from './day-page.js';

/** What is to be done today, and the trays that are laid. */
export function TodayPages({ standing }: { standing: StandingView }) {
  return (
    <Routes>
      <Route index element={<DayPage standing={standing} />} />
      <Route path="trays/:sessionId" element={<Tray standing={standing} />} />
      <Route path="trays/:sessionId/completion" element={<Completion standing={standing} />} />
      <Route path="*" element={<NoSuchPage />} />
    </Routes>
  );
}

function Tray({ standing }: { standing: StandingView }) {
  const { sessionId = '' } = useParams();
  return <TrayPage key={sessionId} standing={standing} sessionId={sessionId} />;
}

function Completion({ standing }: { standing: StandingView }) {
  const { sessionId = '' } = useParams();
  return <CompletionPage key={sessionId} standing={standing} sessionId={sessionId} />;
}
