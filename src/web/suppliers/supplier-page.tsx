import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { isProblem } from '../service/problem.js';
import { useStudio } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { OffersPart } from './offers-part.js';
import { showTerms } from './suppliers.requests.js';
import { TermsFacts } from './terms-facts.js';
import { TermsForm } from './terms-form.js';

/** One supplier: on what terms it delivers, how long that takes, and what it offers. */
export function SupplierPage({ standing, id: supplierId }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.suppliers;
  const { studioId, studioName, permissions } = standing;
  const {
    answer: terms,
    problem,
    reload,
  } = useAnswer(['supplier terms', studioId, supplierId], () => showTerms(studioId, supplierId));
  const studio = useStudio(studioId);
  const currency = studio.answer?.currency;
  if (problem && isProblem(problem, 'not-found')) return <NoSuchPage />;
  const mayPlan = permissions.includes('plan orders');
  return (
    <Page above={studioName} title={terms?.supplierName ?? words.supplier}>
      <ProblemNote problem={problem ?? studio.problem} />
      {!(terms && currency) && !problem && <p role="status">{texts.app.loading}</p>}
      {terms && currency !== undefined && (
        <>
          <Section title={words.leadTime} hint={words.leadTimeHint}>
            <p>{words.leadTimeBasis[terms.leadTime.basis](terms.leadTime.orders)}</p>
            <p>{words.leadTimeWithin(terms.leadTime.medianDays, terms.leadTime.days95)}</p>
            {terms.leadTime.leftOut > 0 && <p>{words.leftOut(terms.leadTime.leftOut)}</p>}
          </Section>
          <Section title={words.terms} hint={mayPlan ? words.termsHint : undefined}>
            {mayPlan ? (
              <TermsForm
                studioId={studioId}
                terms={terms}
                currency={currency}
                seesContact={permissions.includes('place orders')}
                reload={reload}
              />
            ) : (
              <TermsFacts terms={terms} />
            )}
          </Section>
          <OffersPart
            studioId={studioId}
            supplierId={supplierId}
            currency={currency}
            mayPlan={mayPlan}
            onChanged={reload}
          />
        </>
      )}
    </Page>
  );
}
