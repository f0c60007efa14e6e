import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { listNotices } from '../recalls.requests.js';
import { NoticeEntry } from './notice-entry.js';

/** Published notices that met something here and wait for somebody to look at them. */
export function NoticesPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.inbox;
  const { studioId, studioName } = standing;
  const list = usePages(['waiting notices', studioId], (after) => listNotices(studioId, after));
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <PagedEntries
        label={words.title}
        list={list}
        none={words.none}
        entry={(notice) => <NoticeEntry key={notice.id} standing={standing} notice={notice} />}
      />
    </Page>
  );
}
