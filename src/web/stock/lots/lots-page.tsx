import { Group } from '@mantine/core';
import { useSearchParams } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Choice } from '../../frame/choice.js';
import { PageLink } from '../../frame/navigation.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { pathOf } from '../../frame/places.js';
import { useAnswer } from '../../service/use-answer.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { nameOf } from '../amounts.js';
import { FindField } from '../find/find-field.js';
import { LotEntry } from './lot-entry.js';
import { type LotState, listLots, lotStates, showProduct } from './lots.requests.js';

const isState = (text: string | null): text is LotState => lotStates.some((state) => state === text);

/** Lots, the latest first: all, those of one product or of one code, in a state. */
export function LotsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const [parameters, setParameters] = useSearchParams();
  const asked = parameters.get('state');
  const state = isState(asked) ? asked : '';
  const code = parameters.get('code') ?? '';
  const productId = parameters.get('product') ?? '';
  const list = usePages(['lots', studioId, state, code, productId], (after) =>
    listLots(
      studioId,
      {
        ...(state !== '' && { state }),
        ...(code !== '' && { code }),
        ...(productId !== '' && { productId }),
      },
      after,
    ),
  );
  const choose = (value: LotState | '') => {
    const next = new URLSearchParams(parameters);
    if (value === '') next.delete('state');
    else next.set('state', value);
    setParameters(next, { replace: true });
  };
  return (
    <>
      <FindField studioId={studioId} />
      <Page above={studioName} title={texts.lots.title} lead={texts.lots.lead}>
        {(code !== '' || productId !== '') && (
          <Note kind="plain">
            <p>
              {code !== '' && texts.lots.ofCode(code)}{' '}
              {productId !== '' && <OfProduct studioId={studioId} productId={productId} />}
            </p>
            <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots')}>
              {texts.lots.all}
            </PageLink>
          </Note>
        )}
        <Group gap="md" align="flex-end" mt="md" mb="xl">
          <Choice
            label={texts.lots.state}
            value={state}
            none={texts.levels.everything}
            choices={lotStates.map((one) => ({ value: one, label: texts.lots.states[one] }))}
            onChange={choose}
          />
        </Group>
        <PagedEntries
          label={texts.lots.title}
          list={list}
          none={texts.lots.none}
          entry={(lot) => <LotEntry key={lot.id} studioId={studioId} lot={lot} />}
        />
      </Page>
    </>
  );
}

function OfProduct({ studioId, productId }: { studioId: string; productId: string }) {
  const texts = useTexts();
  const product = useAnswer(['product', studioId, productId], () => showProduct(studioId, productId));
  if (!product.answer) return null;
  const { name, shade, makerName } = product.answer;
  return texts.lots.ofProduct(`${nameOf({ productName: name, shade })}, ${makerName}`);
}
