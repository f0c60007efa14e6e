import { Page } from '../frame/page.js';
import { pagesOf, type StudioPlace } from '../frame/pages-of-role.js';
import { useStanding } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { PeoplePage } from './people-page.js';
import { ProgramsPage } from './programs-page.js';
import { TabletsPage } from './tablets-page.js';

const pages = { people: PeoplePage, tablets: TabletsPage, programs: ProgramsPage };

/** Who gets into a studio, for those whose role decides it. */
export function AccessPage({ place: { studioId, page } }: { place: StudioPlace }) {
  const texts = useTexts();
  const standing = useStanding(studioId);
  if (!standing) return <Page title={texts.app.noSuchPage} lead={texts.app.noSuchPageDetail} />;
  if (!pagesOf(standing.permissions).includes(page)) {
    return <Page above={standing.studioName} title={texts.app.notYours} lead={texts.app.notYoursDetail} />;
  }
  const OpenPage = pages[page];
  return <OpenPage standing={standing} />;
}
