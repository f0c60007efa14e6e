import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { DrillEntry } from './drill-entry.js';
import { listDrills } from './drills.requests.js';
import { ScheduleSection } from './schedule-section.js';
import { StartDrillForm } from './start-drill-form.js';

/** Rehearsals of a recall: one begun now, those that were, and when the next is due. */
export function DrillsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.drills;
  const { studioId, studioName, permissions } = standing;
  const list = usePages(['drills', studioId], (after) => listDrills(studioId, after));
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      {permissions.includes('answer recalls') && (
        <Section title={words.start} hint={words.startHint}>
          <StartDrillForm standing={standing} />
        </Section>
      )}
      <Section title={words.history} hint={words.historyHint}>
        <PagedEntries
          label={words.history}
          list={list}
          none={words.none}
          entry={(drill) => <DrillEntry key={drill.recallId} standing={standing} drill={drill} />}
        />
      </Section>
      <ScheduleSection standing={standing} />
    </Page>
  );
}
