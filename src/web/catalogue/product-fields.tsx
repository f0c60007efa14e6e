import { Radio, Stack, TextInput } from '@mantine/core';
import { membranes, pigmentRoles, productKinds } from '../../catalogue/vocabulary.js';
import type { OpenedLifeUnit } from '../../identity/opened-life-duration.js';
import { Choice } from '../frame/choice.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import styles from './catalogue.module.css';
import { CompanyField } from './company-field.js';
import { NotationField } from './notation-field.js';
import type { ProductDraft, UnreadableNumber } from './product-draft.js';

const lifeUnits: readonly OpenedLifeUnit[] = ['months', 'days', 'hours'];

/** What a product is; only what its kind has is asked for. */
export function ProductFields({
  studioId,
  draft,
  isNew,
  unreadable,
  problem,
  onChange,
}: {
  studioId: string;
  draft: ProductDraft;
  /** The kind is chosen once. */
  isNew: boolean;
  unreadable: readonly UnreadableNumber[];
  problem: ServiceProblem | undefined;
  onChange: (draft: ProductDraft) => void;
}) {
  const texts = useTexts();
  const words = texts.products;
  const { kind } = draft;
  const set = (change: Partial<ProductDraft>) => onChange({ ...draft, ...change });
  const faultOf = (field: string) =>
    unreadable.includes(field as UnreadableNumber) ? words.noNumber : problem?.faultOf(field);
  const text = (field: TextField, label: string, hint?: string, at: string = field) => (
    <TextInput
      label={label}
      description={hint}
      maxLength={120}
      autoComplete="off"
      value={draft[field]}
      error={faultOf(at)}
      onChange={(event) => set({ [field]: event.currentTarget.value })}
    />
  );
  const amount = (field: AmountField, label: string, hint: string, at: string, required = false) => (
    <TextInput
      label={label}
      description={hint}
      required={required}
      inputMode="decimal"
      maxLength={12}
      autoComplete="off"
      value={draft[field]}
      error={faultOf(at)}
      onChange={(event) => set({ [field]: event.currentTarget.value })}
    />
  );
  const openedLife = (
    <div className={styles.pair}>
      {amount(
        'openedLifeAmount',
        words.openedLife,
        kind === 'pigment' ? words.openedLifeHint : words.openedLifeOfConsumable,
        'openedLife',
      )}
      <Choice
        label={words.openedLifeUnit}
        value={draft.openedLifeUnit}
        choices={lifeUnits.map((unit) => ({ value: unit, label: words.lifeUnits[unit] }))}
        onChange={(unit) => unit !== '' && set({ openedLifeUnit: unit })}
      />
    </div>
  );
  return (
    <>
      {isNew && (
        <Radio.Group
          label={words.kind}
          value={kind}
          onChange={(value) => set({ kind: value as typeof kind })}
        >
          <Stack gap="sm" mt="xs">
            {productKinds.map((value) => (
              <Radio
                key={value}
                value={value}
                label={words.kinds[value]}
                description={words.kindHints[value]}
              />
            ))}
          </Stack>
        </Radio.Group>
      )}
      <CompanyField
        studioId={studioId}
        kind="maker"
        mayAdd
        value={draft.makerId}
        error={problem?.faultOf('makerId')}
        onChange={(makerId) => set({ makerId })}
      />
      <TextInput
        label={words.name}
        description={words.nameHint}
        required
        maxLength={120}
        autoComplete="off"
        value={draft.name}
        error={problem?.detailOf('already-exists') ?? problem?.faultOf('name')}
        onChange={(event) => set({ name: event.currentTarget.value })}
      />
      {kind === 'pigment' && (
        <>
          {text('shade', words.shade, words.shadeHint)}
          <Choice
            label={words.pigmentRole}
            value={draft.pigmentRole}
            choices={pigmentRoles.map((role) => ({ value: role, label: words.pigmentRoles[role] }))}
            onChange={(role) => role !== '' && set({ pigmentRole: role })}
          />
          {amount('millilitres', words.millilitres, words.millilitresHint, 'volumeMicrolitres', true)}
          {openedLife}
          {amount('dropMicrolitres', words.drop, words.dropHint, 'dropMicrolitres')}
          {text('colourIndexNumbers', words.colourIndex, words.colourIndexHint)}
        </>
      )}
      {kind === 'cartridge' && (
        <>
          <NotationField
            value={draft.notation}
            error={faultOf('notation')}
            onChange={(notation) => set({ notation })}
          />
          {draft.notation.trim() === '' && amount('points', words.points, words.pointsHint, 'points')}
          {text('machineFit', words.machineFit, words.machineFitHint)}
          <Choice
            label={words.membrane}
            description={words.membraneHint}
            value={draft.membrane}
            choices={membranes.map((membrane) => ({ value: membrane, label: words.membranes[membrane] }))}
            onChange={(membrane) => membrane !== '' && set({ membrane })}
          />
        </>
      )}
      {kind === 'consumable' && openedLife}
    </>
  );
}

type TextField = 'shade' | 'colourIndexNumbers' | 'machineFit';
type AmountField = 'millilitres' | 'dropMicrolitres' | 'openedLifeAmount' | 'points';
