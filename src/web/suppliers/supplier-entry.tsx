import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useTexts } from '../texts/texts.js';
import { wordsOfTerms } from './terms-words.js';

/** One supplier in a line or two. */
export function SupplierEntry({ studioId, terms }: { studioId: string; terms: SupplierTermsView }) {
  const texts = useTexts();
  const words = texts.suppliers;
  const { supplierId, supplierName, offers, version } = terms;
  return (
    <Entry
      name={supplierName}
      mark={version === null ? words.noTerms : undefined}
      actions={
        <PageLink
          to={pathOf({ studioId, area: 'ordering' }, 'suppliers', supplierId)}
          alone
          aria-label={words.openOf(supplierName)}
        >
          {words.open}
        </PageLink>
      }
    >
      <p>{words.offers(offers)}</p>
      <p>{wordsOfTerms(terms, texts)}</p>
    </Entry>
  );
}
