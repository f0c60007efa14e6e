import { Textarea, TextInput } from '@mantine/core';
import type { ProductView } from '../../catalogue/products.views.js';
import type { PersonView } from '../../identity/people.views.js';
import type { SessionView } from '../../sessions/session-record.views.js';
import { knownBy } from '../../sessions/vocabulary.js';
import { Choice } from '../frame/choice.js';
import { ProblemNote } from '../frame/problem-note.js';
import type { ServiceProblem } from '../service/problem.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import type { UseDraft } from './late-use.js';
import { listLotsOf } from './records.requests.js';
import { StudioTimeField } from './studio-time-field.js';
import type { WrittenStudioTime } from './use-studio-time.js';

/** The lot of a use, how it was known, how much it was and why. */
export function UseFields({
  studioId,
  session,
  product,
  draft,
  appliedAt,
  removedAt,
  people,
  problem,
  onChange,
}: {
  studioId: string;
  session: SessionView;
  product: ProductView;
  draft: UseDraft;
  appliedAt: WrittenStudioTime;
  removedAt: WrittenStudioTime;
  people: readonly PersonView[];
  problem: ServiceProblem | undefined;
  onChange: (draft: UseDraft) => void;
}) {
  const texts = useTexts();
  const lots = useAnswer(['lots of product', studioId, product.id], () => listLotsOf(studioId, product.id));
  const set = (changed: Partial<UseDraft>) => onChange({ ...draft, ...changed });
  const fault = (field: string) => problem?.faultOf(`uses.0.${field}`) ?? problem?.faultOf(field);
  return (
    <>
      <ProblemNote problem={lots.problem} />
      <Choice
        label={texts.late.lot}
        value={draft.lotId}
        none={texts.late.lotAsWritten}
        error={fault('lotId')}
        choices={(lots.answer?.items ?? []).map(({ id, code, useBy }) => ({
          value: id,
          label: texts.late.lotChoice(
            code ?? texts.late.lotWithoutCode,
            useBy === null ? texts.session.noUseBy : writtenDay(useBy, texts.language),
          ),
        }))}
        onChange={(lotId) => set({ lotId })}
      />
      {draft.lotId === '' && (
        <>
          <TextInput
            label={texts.late.code}
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            maxLength={60}
            value={draft.code}
            error={fault('code')}
            onChange={(event) => set({ code: event.currentTarget.value })}
          />
          {draft.code.trim() === '' && (
            <Choice
              label={texts.late.codeState}
              value={draft.codeState}
              choices={(['none printed', 'unreadable'] as const).map((state) => ({
                value: state,
                label: texts.late.codeStates[state],
              }))}
              onChange={(codeState) => set({ codeState: codeState === '' ? 'none printed' : codeState })}
            />
          )}
          <TextInput
            label={texts.late.useBy}
            description={texts.late.useByHint}
            autoComplete="off"
            maxLength={20}
            value={draft.useBy}
            error={fault('useBy')}
            onChange={(event) => set({ useBy: event.currentTarget.value })}
          />
        </>
      )}
      <Choice
        label={texts.late.knownBy}
        required
        value={draft.knownBy}
        none={texts.plan.choose}
        error={fault('knownBy')}
        choices={knownBy.map((how) => ({ value: how, label: texts.session.knownBy[how] }))}
        onChange={(how) => set({ knownBy: how })}
      />
      {product.stockForm === 'pieces' ? (
        <AmountField
          label={texts.late.pieces}
          most={100}
          value={draft.pieces}
          required
          error={fault('pieces')}
          onChange={(pieces) => set({ pieces })}
        />
      ) : (
        <>
          <AmountField
            label={texts.late.drops}
            hint={texts.late.amountHint}
            most={500}
            value={draft.drops}
            error={fault('drops')}
            onChange={(drops) => set({ drops })}
          />
          {draft.drops === '' && (
            <AmountField
              label={texts.late.microlitres}
              most={50_000}
              value={draft.microlitres}
              error={fault('microlitres')}
              onChange={(microlitres) => set({ microlitres })}
            />
          )}
        </>
      )}
      {session.mixes.length > 0 && product.kind === 'pigment' && (
        <Choice
          label={texts.late.mix}
          value={draft.mixId}
          none={texts.late.noMix}
          error={fault('mixId')}
          choices={session.mixes.map(({ id, label }) => ({ value: id, label }))}
          onChange={(mixId) => set({ mixId })}
        />
      )}
      {product.kind === 'consumable' && (
        <>
          <StudioTimeField
            label={texts.late.appliedAt}
            time={appliedAt}
            required={false}
            error={fault('appliedAt')}
          />
          <StudioTimeField
            label={texts.late.removedAt}
            time={removedAt}
            required={false}
            error={fault('removedAt')}
          />
          <Choice
            label={texts.late.appliedBy}
            value={draft.appliedBy}
            none={texts.late.appliedByNone}
            error={fault('appliedBy')}
            choices={people.map(({ id, name }) => ({
              value: id,
              label: name ?? texts.records.unknownPerson,
            }))}
            onChange={(appliedBy) => set({ appliedBy })}
          />
        </>
      )}
      <Textarea
        label={texts.late.reason}
        description={texts.late.reasonHint}
        autosize
        maxLength={500}
        value={draft.reason}
        error={fault('reason')}
        onChange={(event) => set({ reason: event.currentTarget.value })}
      />
    </>
  );
}

function AmountField({
  label,
  hint,
  most,
  value,
  required = false,
  error,
  onChange,
}: {
  label: string;
  hint?: string;
  most: number;
  value: string;
  required?: boolean;
  error: string | undefined;
  onChange: (value: string) => void;
}) {
  return (
    <TextInput
      type="number"
      inputMode="numeric"
      min={1}
      max={most}
      step={1}
      label={label}
      {...(hint !== undefined && { description: hint })}
      required={required}
      value={value}
      error={error}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}
