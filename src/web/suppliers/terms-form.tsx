import { Checkbox } from '@mantine/core';
import { LONGEST_LEAD_TIME_DAYS } from '../../reorder/supply/lead-time.js';
import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { Note } from '../frame/note.js';
import { useEdits } from '../frame/use-edits.js';
import { ChangeForm } from '../settings/change-form.js';
import { noteOf } from '../settings/note-of-field.js';
import { TextField } from '../settings/text-field.js';
import { useTexts } from '../texts/texts.js';
import styles from './suppliers.module.css';
import { setTerms } from './suppliers.requests.js';
import { type AmountField, draftOfTerms, type TermsDraft, termsOfDraft, weekdays } from './terms-draft.js';
import { wordsOfWeekdays } from './terms-words.js';
import { unreadableAmounts } from './unreadable-amounts.js';

/** Sets on what terms a supplier delivers. */
export function TermsForm({
  studioId,
  terms,
  currency,
  seesContact,
  reload,
}: {
  studioId: string;
  terms: SupplierTermsView;
  /** The studio's. */
  currency: string;
  seesContact: boolean;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.suppliers;
  const edits = useEdits<TermsDraft>(draftOfTerms(terms, currency, texts.language));
  const days = wordsOfWeekdays(weekdays, texts.language, 'long');
  const save = async (id: string) => {
    const content = termsOfDraft(edits.draft, currency, terms.version, edits.changes);
    if ('unreadable' in content) throw unreadableAmounts(content.unreadable, words.noAmount(currency));
    await setTerms(studioId, terms.supplierId, id, content);
  };
  return (
    <ChangeForm label={words.terms} edits={edits} version={terms.version ?? 0} save={save} reload={reload}>
      {(problem) => {
        const amount = (field: AmountField, label: string, description: string) => (
          <TextField
            edits={edits}
            field={field}
            problem={problem}
            label={label}
            description={description}
            inputMode="decimal"
          />
        );
        return (
          <>
            {terms.version !== null && terms.currency !== currency && (
              <Note kind="plain">
                <p>{words.otherCurrency(terms.currency, currency)}</p>
              </Note>
            )}
            <TextField
              edits={edits}
              field="quotedLeadTimeDays"
              problem={problem}
              label={words.quoted}
              description={words.quotedHint}
              type="number"
              inputMode="numeric"
              min={0}
              max={LONGEST_LEAD_TIME_DAYS}
              step={1}
            />
            <fieldset className={styles.weekdays}>
              <legend>{words.orderDays}</legend>
              <p>{words.orderDaysHint}</p>
              <div className={styles.days}>
                {weekdays.map((day, index) => (
                  <Checkbox
                    key={day}
                    label={days[index]}
                    checked={edits.draft[`weekday${day}`]}
                    error={noteOf(texts, edits, `weekday${day}`, problem)}
                    onChange={(event) => edits.set({ [`weekday${day}`]: event.currentTarget.checked })}
                  />
                ))}
              </div>
            </fieldset>
            {amount('minimumOrderMinor', words.minimumIn(currency), words.minimumHint)}
            {amount('deliveryCostMinor', words.deliveryIn(currency), words.deliveryHint)}
            {amount('freeDeliveryFromMinor', words.freeIn(currency), words.freeHint)}
            {seesContact && (
              <>
                <TextField
                  edits={edits}
                  field="mailAddress"
                  problem={problem}
                  label={words.mailAddress}
                  description={words.mailAddressHint}
                  type="email"
                  maxLength={254}
                  error={
                    problem?.faultOf('contact.mailAddress') ?? noteOf(texts, edits, 'mailAddress', problem)
                  }
                />
                <TextField
                  edits={edits}
                  field="customerNumber"
                  problem={problem}
                  label={words.customerNumber}
                  description={words.customerNumberHint}
                  maxLength={60}
                  error={
                    problem?.faultOf('contact.customerNumber') ??
                    noteOf(texts, edits, 'customerNumber', problem)
                  }
                />
              </>
            )}
          </>
        );
      }}
    </ChangeForm>
  );
}
