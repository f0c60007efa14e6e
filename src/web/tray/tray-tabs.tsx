import { Tabs } from '@mantine/core';
import type { SessionListItemView } from '../../sessions/sessions.views.js';
import { Entries } from '../frame/entries.js';
import type { Whose } from '../offline/use-waiting.js';
import { useTexts } from '../texts/texts.js';
import type { LaidThing } from './laid-things.js';
import { LastVisit } from './last-visit.js';
import { MixesPanel } from './mixes-panel.js';
import styles from './tray-page.module.css';
import { TrayThingEntry } from './tray-thing-entry.js';
import type { useMixes } from './use-mixes.js';

/** Stands in ids, which take no spaces. */
export type TrayTab = 'tray' | 'mixes' | 'last-visit';

/** What stands beside the verdict: what lies on the tray, the mixes, and what was mixed the last time. */
export function TrayTabs({
  whose,
  session,
  things,
  works,
  mixes,
  tab,
  chosenMixId,
  onTab,
  onChooseMix,
}: {
  whose: Whose;
  /** Undefined once it is over. */
  session: SessionListItemView | undefined;
  things: readonly LaidThing[];
  works: boolean;
  mixes: ReturnType<typeof useMixes>;
  tab: TrayTab;
  chosenMixId: string | undefined;
  onTab: (tab: TrayTab) => void;
  onChooseMix: (mixId: string) => void;
}) {
  const texts = useTexts();
  const pieces = things.reduce((sum, thing) => sum + thing.pieces, 0);
  const bottles = things.filter(({ stockForm }) => stockForm === 'container').length;
  return (
    <Tabs
      className={styles.laid}
      value={tab}
      onChange={(chosen) => chosen !== null && onTab(chosen as TrayTab)}
    >
      {/* A panel that is not chosen stays, empty: its tab says what it controls. */}
      <Tabs.List grow aria-label={texts.tray.title}>
        <Tabs.Tab className={styles.tab} value="tray">
          {texts.tray.linesCount(things.length)}
        </Tabs.Tab>
        <Tabs.Tab className={styles.tab} value="mixes">
          {texts.tray.mixesCount(mixes.mixes?.length ?? 0)}
        </Tabs.Tab>
        {session && (
          <Tabs.Tab className={styles.tab} value="last-visit">
            {texts.lastVisit.title}
          </Tabs.Tab>
        )}
      </Tabs.List>
      <Tabs.Panel className={styles.panel} value="tray">
        {tab === 'tray' && (
          <>
            <p className={styles.hint}>{texts.tray.linesHint}</p>
            {things.length === 0 && <p>{texts.tray.empty}</p>}
            {things.length > 0 && (
              <>
                <p role="status">{texts.tray.runningTotal(pieces, bottles)}</p>
                <Entries label={texts.tray.lines}>
                  {things.map((thing) => (
                    <TrayThingEntry key={thing.containerId} whose={whose} thing={thing} works={works} />
                  ))}
                </Entries>
              </>
            )}
          </>
        )}
      </Tabs.Panel>
      <Tabs.Panel className={styles.panel} value="mixes">
        {tab === 'mixes' && (
          <MixesPanel
            mixes={mixes}
            things={things}
            chosenId={chosenMixId}
            works={works}
            onChoose={onChooseMix}
          />
        )}
      </Tabs.Panel>
      {session && (
        <Tabs.Panel className={styles.panel} value="last-visit">
          {tab === 'last-visit' && (
            <LastVisit
              studioId={whose.studioId}
              session={session}
              things={things}
              works={works}
              onRepeat={(label, parts) => {
                onChooseMix(mixes.begin(label, parts));
                onTab('mixes');
              }}
            />
          )}
        </Tabs.Panel>
      )}
    </Tabs>
  );
}
