import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { ExpectForm } from './expect-form.js';
import { listExpected } from './expected.requests.js';
import { ExpectedEntry } from './expected-entry.js';

/** What was ordered and is to come, and what became of what was expected before. */
export function ExpectedPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.expected;
  const { studioId, studioName, permissions } = standing;
  const open = usePages(['expected deliveries', studioId, 'expected'], (after) =>
    listExpected(studioId, 'expected', after),
  );
  const ended = usePages(['expected deliveries', studioId, 'ended'], (after) =>
    listExpected(studioId, 'ended', after),
  );
  const reload = async () => {
    await Promise.all([open.reload(), ended.reload()]);
  };
  const mayReceive = permissions.includes('receive stock');
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <PagedEntries
          label={words.list}
          list={open}
          none={words.none}
          entry={(delivery) => (
            <ExpectedEntry key={delivery.id} standing={standing} delivery={delivery} onChanged={reload} />
          )}
        />
        {mayReceive && (open.items?.length ?? 0) > 0 && (
          <PageLink to={pathOf({ studioId, area: 'stock' }, 'receive')} alone>
            {texts.receiving.title}
          </PageLink>
        )}
      </Section>
      {mayReceive && (
        <Section title={words.add} hint={words.addHint}>
          <ExpectForm
            studioId={studioId}
            mayAddSupplier={permissions.includes('change the register')}
            onExpected={reload}
          />
        </Section>
      )}
      <Section title={words.ended} hint={words.endedHint}>
        <PagedEntries
          label={words.ended}
          list={ended}
          none={words.noneEnded}
          entry={(delivery) => (
            <ExpectedEntry key={delivery.id} standing={standing} delivery={delivery} onChanged={reload} />
          )}
        />
      </Section>
    </Page>
  );
}
