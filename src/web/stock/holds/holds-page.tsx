import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { OpenHoldView } from '../../../stock/holds.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { pathOf } from '../../frame/places.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { nameOf, writtenLabel } from '../amounts.js';
import { FindField } from '../find/find-field.js';
import { HoldEntry } from './hold-entry.js';
import { listOpenHolds } from './holds.requests.js';

/** Every hold that stands. */
export function HoldsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const list = usePages(['open holds', studioId], (after) => listOpenHolds(studioId, after));
  const area = { studioId, area: 'stock' } as const;
  const about = (hold: OpenHoldView) =>
    [
      nameOf(hold),
      hold.lotCode === null ? texts.lot.withoutCode : texts.lot.of(hold.lotCode),
      hold.labelCode !== null && writtenLabel(hold.labelCode),
    ]
      .filter((one) => one !== false)
      .join(', ');
  return (
    <>
      <FindField studioId={studioId} />
      <Page above={studioName} title={texts.holds.title} lead={texts.holds.lead}>
        <PagedEntries
          label={texts.holds.title}
          list={list}
          none={texts.holds.none}
          entry={(hold) => (
            <HoldEntry
              key={hold.id}
              standing={standing}
              hold={hold}
              about={about(hold)}
              of={
                <PageLink
                  alone
                  to={
                    hold.containerId === null
                      ? pathOf(area, 'lots', hold.lotId)
                      : pathOf(area, 'containers', hold.containerId)
                  }
                >
                  {about(hold)}
                </PageLink>
              }
              onReleased={list.reload}
            />
          )}
        />
      </Page>
    </>
  );
}
