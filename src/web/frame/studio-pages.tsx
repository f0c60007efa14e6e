import { useLocation, useParams } from 'react-router';
import { PeoplePage } from '../access/people-page.js';
import { ProgramsPage } from '../access/programs-page.js';
import { TabletsPage } from '../access/tablets-page.js';
import { DayPage } from '../sessions/day-page.js';
import { useStanding } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { TrayPage } from '../tray/tray-page.js';
import { NoSuchPage } from './no-such-page.js';
import { Page } from './page.js';
import { pagesOf, placeOf } from './pages-of-role.js';

const pages = { sessions: DayPage, people: PeoplePage, tablets: TabletsPage, programs: ProgramsPage };

/** The pages of a studio, for those whose role has a part in them. */
export function StudioPages() {
  const texts = useTexts();
  const { pathname } = useLocation();
  const { part } = useParams();
  const place = placeOf(pathname);
  const standing = useStanding(place?.studioId ?? '');
  if (!place || !standing || (part !== undefined && place.page !== 'sessions')) return <NoSuchPage />;
  if (!pagesOf(standing.permissions).includes(place.page)) {
    return <Page above={standing.studioName} title={texts.app.notYours} lead={texts.app.notYoursDetail} />;
  }
  if (part !== undefined) return <TrayPage key={part} standing={standing} sessionId={part} />;
  const OpenPage = pages[place.page];
  return <OpenPage key={pathname} standing={standing} />;
}
