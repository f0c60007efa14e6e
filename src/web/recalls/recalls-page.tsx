import { Button } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Choice } from '../frame/choice.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { RecallEntry } from './recall-entry.js';
import styles from './recalls.module.css';
import { listRecalls } from './recalls.requests.js';

const endStates = ['closed', 'withdrawn'] as const;

/** What is being called back, and what is outstanding of it. */
export function RecallsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.recalls;
  const { studioId, studioName, permissions } = standing;
  const open = usePages(['recalls', studioId, 'open'], (after) => listRecalls(studioId, 'open', after));
  const recalls = open.items?.filter(({ kind }) => kind === 'recall');
  const drills = open.items?.filter(({ kind }) => kind === 'drill') ?? [];
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      {permissions.includes('answer recalls') && (
        <div className={styles.first}>
          <Button component={Link} to={pathOf({ studioId, area: 'recalls' }, 'answer')} size="lg">
            {words.answer}
          </Button>
        </div>
      )}
      <Section title={words.open} hint={words.openHint}>
        <PagedEntries
          label={words.open}
          list={{ ...open, items: recalls }}
          none={words.noneOpen}
          entry={(recall) => <RecallEntry key={recall.id} standing={standing} recall={recall} />}
        />
      </Section>
      {drills.length > 0 && (
        <Section title={words.openDrills} hint={words.openDrillsHint}>
          <PagedEntries
            label={words.openDrills}
            list={{ ...open, items: drills, hasMore: false }}
            none=""
            entry={(recall) => <RecallEntry key={recall.id} standing={standing} recall={recall} />}
          />
        </Section>
      )}
      <Over standing={standing} />
    </Page>
  );
}

/** Those that have ended; one state at a time, since each is a list of its own. */
function Over({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.recalls;
  const { studioId } = standing;
  const [state, setState] = useState<(typeof endStates)[number]>('closed');
  const list = usePages(['recalls', studioId, state], (after) => listRecalls(studioId, state, after));
  return (
    <Section title={words.over} hint={words.overHint}>
      <div className={styles.filter}>
        <Choice
          label={texts.lots.state}
          value={state}
          choices={endStates.map((one) => ({ value: one, label: words.states[one] }))}
          onChange={(value) => value !== '' && setState(value)}
        />
      </div>
      <PagedEntries
        label={words.over}
        list={list}
        none={words.noneOver}
        entry={(recall) => <RecallEntry key={recall.id} standing={standing} recall={recall} />}
      />
    </Section>
  );
}
