import type { ComponentType } from 'react';
import { Navigate, Route, Routes, useParams } from 'react-router';
import type { Permission } from '../../identity/permissions.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { GuardedPage } from './guarded-page.js';
import { NoSuchPage } from './no-such-page.js';
import { pathOf, type StudioArea } from './places.js';
import { SubPages } from './sub-pages.js';

export interface AreaPage {
  /** Below the area; `:id` where it is of one thing. */
  path: string;
  /** Its name in the menu of the area; left out: it is reached from other pages. */
  name?: (texts: Texts) => string;
  needs: Permission;
  /** @param id what stands for `:id` in the path; empty where there is none */
  Open: ComponentType<{ standing: StandingView; id: string }>;
}

/** An area of a studio: its menu, and its pages for those whose role has a part in them. */
export function AreaPages({
  area,
  standing,
  pages,
}: {
  area: StudioArea;
  standing: StandingView;
  /** In the order of the menu. */
  pages: readonly AreaPage[];
}) {
  const texts = useTexts();
  const place = { studioId: standing.studioId, area };
  const offered = pages.filter(({ needs }) => standing.permissions.includes(needs));
  const links = offered.flatMap(({ path, name }) =>
    name === undefined ? [] : [{ to: pathOf(place, path), name: name(texts) }],
  );
  const [first] = links;
  return (
    <>
      <SubPages label={texts.frame[area]} pages={links} />
      <Routes>
        {first && <Route index element={<Navigate to={first.to} replace />} />}
        {pages.map(({ path, needs, Open }) => (
          <Route
            key={path}
            path={path}
            element={
              <GuardedPage standing={standing} needs={needs}>
                <OpenPage standing={standing} Open={Open} />
              </GuardedPage>
            }
          />
        ))}
        <Route path="*" element={<NoSuchPage />} />
      </Routes>
    </>
  );
}

/** Another thing is another page, which begins anew. */
function OpenPage({ standing, Open }: { standing: StandingView; Open: AreaPage['Open'] }) {
  const { id = '' } = useParams();
  return <Open key={id} standing={standing} id={id} />;
}
