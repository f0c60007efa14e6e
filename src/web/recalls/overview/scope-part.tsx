import { Button, Space } from '@mantine/core';
import { Link } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallScopeView, RecallView } from '../../../recalls/recalls.views.js';
import type { ScopeItem } from '../../../stock/lot-matching/lot-scope.js';
import { Entries, Entry } from '../../frame/entries.js';
import { Facts } from '../../frame/facts.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { usePeople } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import styles from '../recalls.module.css';
import { isSaidHere } from '../said-here.js';
import { useProductNames } from '../scope/product-name.js';
import { nameOfItem, writtenLots } from '../scope/written-scope.js';

/** What is recalled, in words, and what it was before it was amended. */
export function ScopePart({
  standing: { studioId, permissions },
  recall,
}: {
  standing: StandingView;
  recall: RecallView;
}) {
  const texts = useTexts();
  const words = texts.recallOverview;
  const said = texts.saidOfRecall;
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId);
  const [latest] = recall.scopes;
  if (!latest) return null;
  const who = ({ personId }: RecallScopeView) =>
    people.answer?.find(({ id }) => id === personId)?.name ?? texts.alerts.somebody;
  return (
    <Section title={texts.scope.title} hint={words.scopeHint}>
      <ScopeWords studioId={studioId} scope={latest} />
      <Space h="md" />
      <Facts
        facts={[
          [said.issuer, latest.issuer],
          [said.reference, latest.reference],
          [said.issuedOn, latest.issuedOn !== null && writtenDay(latest.issuedOn, texts.language)],
          [said.classification, latest.classification],
          [said.risk, latest.risk],
          [said.remedy, latest.remedy],
        ]}
      />
      {recall.kind === 'recall' && isSaidHere(recall, studioId) && permissions.includes('answer recalls') && (
        <Button
          mt="md"
          variant="default"
          component={Link}
          to={pathOf({ studioId, area: 'recalls' }, recall.id, 'amend')}
        >
          {words.amend}
        </Button>
      )}
      {recall.scopes.length > 1 && (
        <details>
          <summary className={styles.summary}>{words.history(recall.scopes.length)}</summary>
          <Entries label={words.history(recall.scopes.length)}>
            {recall.scopes.map((scope) => (
              <Entry
                key={scope.number}
                name={scope.reason === null ? words.firstScope : words.amended(scope.number - 1)}
                mark={scope === latest ? words.counts : undefined}
              >
                <p>{words.saidBy(who(scope), when(scope.occurredAt))}</p>
                {scope.reason !== null && <p>{words.because(scope.reason)}</p>}
                <ScopeWords studioId={studioId} scope={scope} />
              </Entry>
            ))}
          </Entries>
        </details>
      )}
    </Section>
  );
}

function ScopeWords({ studioId, scope }: { studioId: string; scope: RecallScopeView }) {
  return (
    <div>
      {(scope.scope.items as ScopeItem[]).map((item, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a scope that was written never changes.
        <ItemWords key={index} studioId={studioId} item={item} />
      ))}
    </div>
  );
}

function ItemWords({ studioId, item }: { studioId: string; item: ScopeItem }) {
  const texts = useTexts();
  const names = useProductNames(studioId, item.productIds);
  return (
    <div className={styles.item}>
      <p className={styles.name}>{nameOfItem(item, texts, names)}</p>
      <p>{writtenLots(item, texts)}</p>
    </div>
  );
}
