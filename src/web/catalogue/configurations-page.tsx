import { Button } from '@mantine/core';
import { useRef } from 'react';
import type { ConfigurationView, EquivalenceView } from '../../catalogue/configurations.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { RequestIds } from '../service/request-ids.js';
import { useConfigurations } from '../service/studio-answers.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { withdrawEquivalence } from './catalogue.requests.js';
import { DeclareEquivalenceForm } from './declare-equivalence-form.js';
import { NotationExplained } from './notation-field.js';
import { nameInPool } from './pool-words.js';

/** Which cartridges stand for each other: by what is known and equal, or because a person said so. */
export function ConfigurationsPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.configurations;
  const { answer, problem, reload } = useConfigurations(studioId);
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <NotationExplained />
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {answer?.length === 0 && <p>{words.none}</p>}
        {answer && answer.length > 0 && (
          <Entries label={words.list}>
            {answer.map((configuration) => (
              <ConfigurationEntry
                key={configuration.products.map(({ id }) => id).join()}
                studioId={studioId}
                configuration={configuration}
                onChanged={reload}
              />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={words.declare} hint={words.declareHint}>
        <DeclareEquivalenceForm studioId={studioId} onDeclared={reload} />
      </Section>
    </Page>
  );
}

function ConfigurationEntry({
  studioId,
  configuration: { products, declared, equivalences },
  onChanged,
}: {
  studioId: string;
  configuration: ConfigurationView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.configurations;
  const [first] = products;
  return (
    <Entry
      name={first?.notation ?? first?.name ?? ''}
      mark={declared ? words.declared : undefined}
      below={
        equivalences.length > 0 && (
          <Entries label={words.declarations}>
            {equivalences.map((equivalence) => (
              <Declaration
                key={equivalence.id}
                studioId={studioId}
                equivalence={equivalence}
                products={products}
                onWithdrawn={onChanged}
              />
            ))}
          </Entries>
        )
      }
    >
      {products.length === 1 && <p>{words.alone}</p>}
      {products.map((product) => (
        <p key={product.id}>
          {[
            nameInPool(product),
            product.machineFit,
            product.membrane === 'yes' && texts.products.withMembrane,
          ]
            .filter((fact) => fact !== null && fact !== false)
            .join(', ')}
        </p>
      ))}
    </Entry>
  );
}

function Declaration({
  studioId,
  equivalence,
  products,
  onWithdrawn,
}: {
  studioId: string;
  equivalence: EquivalenceView;
  products: ConfigurationView['products'];
  onWithdrawn: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.configurations;
  const ids = useRef(new RequestIds()).current;
  const at = useStudioInstants(studioId);
  const nameOf = (id: string) => {
    const product = products.find((known) => known.id === id);
    return product ? nameInPool(product) : words.archivedOne;
  };
  const names = [nameOf(equivalence.productId), nameOf(equivalence.otherProductId)] as const;
  const { run, busy, problem } = useAction(async () => {
    await withdrawEquivalence(studioId, equivalence.id, { id: ids.for({ withdraw: equivalence.id }) });
    await onWithdrawn();
  });
  return (
    <Entry
      name={words.standsFor(...names)}
      actions={
        <Button
          variant="default"
          loading={busy}
          aria-label={words.withdrawOf(...names)}
          onClick={() => void run()}
        >
          {words.withdraw}
        </Button>
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{words.because(equivalence.reason, at(equivalence.declaredAt))}</p>
    </Entry>
  );
}
