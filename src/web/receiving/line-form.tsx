import { Button, Checkbox, Group, TextInput } from '@mantine/core';
import { pieceFaults } from '../../stock/planned-containers.js';
import { readUseBy } from '../../stock/use-by.js';
import { codeStates } from '../../stock/vocabulary.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Choice } from '../frame/choice.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { usePeople } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { type LineDraft, piecesInOne, piecesOf } from './line-draft.js';
import type { LineSurroundings } from './line-entry.js';
import styles from './receiving.module.css';

/** What is said of a line: what its symbol tells is read, the rest is typed from the package. */
export function LineForm({ line, around }: { line: LineDraft; around: LineSurroundings }) {
  const texts = useTexts();
  const words = texts.receiving;
  const { studioId, delivery, places, currency, onAnswered } = around;
  const { answer: people = [] } = usePeople(studioId);
  const { key, scanned, product, contentCount } = line;
  const set = (change: Partial<LineDraft>) => delivery.changeLine(key, change);
  const faultOf = (...fields: string[]) => line.faults.find(({ field }) => fields.includes(field))?.message;
  const symbolFaults = line.faults.filter(({ field }) => !fieldsShown.has(field));
  const tellsLot = scanned !== null && scanned.lotCode !== null;
  const tellsUseBy = scanned !== null && scanned.useBy !== null;
  const close = () => {
    set({ open: false });
    onAnswered();
  };
  const typed = (field: TypedField, label: string, hint: string | undefined, ...fields: string[]) => (
    <TextInput
      label={label}
      description={hint}
      autoComplete="off"
      maxLength={60}
      value={line[field]}
      error={faultOf(...fields)}
      onChange={(event) => set({ [field]: event.currentTarget.value })}
    />
  );
  const counted = (field: 'quantity' | 'piecesEach', label: string, hint: string | undefined) => (
    <TextInput
      type="number"
      inputMode="numeric"
      min={1}
      max={10_000}
      step={1}
      label={label}
      description={hint}
      value={line[field]}
      error={faultOf(field)}
      onChange={(event) => set({ [field]: event.currentTarget.value })}
    />
  );
  return (
    <Fields onSubmit={close} label={words.fieldsOf(product ? wordsOfProduct(product) : '')}>
      <div className={styles.form}>
        {symbolFaults.length > 0 && (
          <Note kind="fault">
            {symbolFaults.map(({ field, message }) => (
              <p key={`${field} ${message}`}>{message}</p>
            ))}
          </Note>
        )}
        {(scanned === null || contentCount === null) && (
          <div>
            <Button variant="subtle" onClick={() => set({ product: null })}>
              {words.otherProduct}
            </Button>
          </div>
        )}
        {scanned !== null && (
          <div>
            <p className={styles.scanned}>{scannedFacts(line, words, texts.language)}</p>
            <Button
              variant="subtle"
              aria-label={words.typeInsteadOf(product ? wordsOfProduct(product) : '')}
              onClick={() => set(withoutSymbol(line))}
            >
              {words.typeInstead}
            </Button>
          </div>
        )}
        {!tellsLot && (
          <>
            <Choice
              label={words.codeState}
              value={line.codeState}
              choices={codeStates.map((state) => ({
                value: state,
                label: texts.receiving.codeStates[state],
              }))}
              error={faultOf('codeState')}
              onChange={(codeState) => codeState !== '' && set({ codeState })}
            />
            {line.codeState === 'printed' && typed('lotCode', words.lotCode, words.lotCodeHint, 'codes')}
          </>
        )}
        {line.codeState === 'printed' && typed('batchCode', words.batchCode, undefined)}
        {!tellsUseBy && (
          <div>
            <TextInput
              label={words.useBy}
              description={words.useByHint}
              autoComplete="off"
              inputMode="numeric"
              maxLength={20}
              disabled={line.noUseBy}
              value={line.noUseBy ? '' : line.useBy}
              error={faultOf('useBy') ?? errorOfUseBy(line.useBy)}
              onChange={(event) => set({ useBy: event.currentTarget.value })}
            />
            {!line.noUseBy && <UseByRead text={line.useBy} />}
            <Checkbox
              mt="md"
              label={words.noUseByPrinted}
              checked={line.noUseBy}
              onChange={(event) => set({ noUseBy: event.currentTarget.checked })}
            />
          </div>
        )}
        <div className={styles.pair}>
          {counted(
            'quantity',
            piecesInOne(line) === 1 ? words.quantity : words.quantityOfPacks(piecesInOne(line)),
            piecesInOne(line) === 1 ? undefined : words.makesPieces(piecesOf(line)),
          )}
          {(scanned === null || scanned.gtin === null) && counted('piecesEach', words.piecesEach, undefined)}
        </div>
        <Choice
          label={words.place}
          value={line.placeId}
          none={words.usualPlace}
          choices={places.map(({ id, name }) => ({ value: id, label: name }))}
          error={faultOf('placeId')}
          onChange={(placeId) => set({ placeId })}
        />
        <fieldset className={styles.plain}>
          <legend>{words.faulty}</legend>
          <p className={styles.explained}>{words.faultyHint}</p>
          <div className={styles.pair}>
            {pieceFaults.map((kind) => (
              <TextInput
                key={kind}
                type="number"
                inputMode="numeric"
                min={0}
                max={10_000}
                step={1}
                label={texts.receiving.pieceFaults[kind]}
                value={line.faulty[kind]}
                error={faultOf('faults')}
                onChange={(event) => set({ faulty: { ...line.faulty, [kind]: event.currentTarget.value } })}
              />
            ))}
          </div>
        </fieldset>
        <details>
          <summary className={styles.summary}>{words.more}</summary>
          <div className={styles.form}>
            <TextInput
              type="date"
              label={words.manufacturedOn}
              value={line.manufacturedOn}
              error={faultOf('manufacturedOn')}
              onChange={(event) => set({ manufacturedOn: event.currentTarget.value })}
            />
            {product?.stockForm === 'container' && (
              <TextInput
                type="date"
                label={words.openedOn}
                description={words.openedOnHint}
                value={line.openedOn}
                error={faultOf('openedAt')}
                onChange={(event) => set({ openedOn: event.currentTarget.value })}
              />
            )}
            {product?.kind === 'pigment' && line.openedOn !== '' && (
              <TextInput
                label={words.left}
                description={words.leftHint}
                inputMode="decimal"
                autoComplete="off"
                maxLength={8}
                value={line.millilitresLeft}
                error={faultOf('remainingMicrolitres')}
                onChange={(event) => set({ millilitresLeft: event.currentTarget.value })}
              />
            )}
            <Choice
              label={words.owner}
              description={words.ownerHint}
              value={line.ownerId}
              none={words.ownedByStudio}
              choices={people
                .filter(({ state }) => state === 'active')
                .map(({ id, name }) => ({ value: id, label: name ?? texts.people.noName }))}
              error={faultOf('ownerId')}
              onChange={(ownerId) => set({ ownerId })}
            />
            <TextInput
              label={words.price(currency)}
              inputMode="decimal"
              autoComplete="off"
              maxLength={12}
              value={line.price}
              error={faultOf('unitCostMinor')}
              onChange={(event) => set({ price: event.currentTarget.value })}
            />
          </div>
        </details>
        <Group>
          <Button type="submit" variant="default">
            {words.done}
          </Button>
        </Group>
      </div>
    </Fields>
  );
}

type TypedField = 'lotCode' | 'batchCode';

/** Faults of these stand at their fields. */
const fieldsShown: ReadonlySet<string> = new Set([
  'codes',
  'codeState',
  'useBy',
  'manufacturedOn',
  'quantity',
  'piecesEach',
  'placeId',
  'ownerId',
  'unitCostMinor',
  'openedAt',
  'remainingMicrolitres',
  'faults',
]);

/** The last day that was understood, so that a slip is seen at once. */
function UseByRead({ text }: { text: string }) {
  const texts = useTexts();
  const read = text.trim() === '' ? undefined : readUseBy(text);
  if (!read || 'error' in read) return null;
  return (
    <p className={styles.explained} role="status">
      {texts.receiving.usableThrough(writtenDay(read.lastDay, texts.language))}
    </p>
  );
}

/** Not while it is still being typed: four digits are a year, and more may follow. */
function errorOfUseBy(text: string): string | undefined {
  if (text.trim().length < 7) return undefined;
  const read = readUseBy(text);
  return 'error' in read ? read.error.message : undefined;
}

function scannedFacts(
  { scanned, contentCount }: LineDraft,
  words: ReturnType<typeof useTexts>['receiving'],
  language: string,
): string {
  if (scanned === null) return '';
  return words.scannedSays(
    [
      scanned.gtin !== null && words.gtin(scanned.gtin),
      scanned.gtin !== null && contentCount === null && words.gtinUnknown,
      scanned.lotCode !== null && words.lot(scanned.lotCode),
      scanned.useBy !== null &&
        (scanned.useByPrecision === 'month'
          ? words.usableThroughMonth(writtenDay(scanned.useBy, language))
          : words.usableThrough(writtenDay(scanned.useBy, language))),
      scanned.producedOn !== null && words.madeOn(writtenDay(scanned.producedOn, language)),
      scanned.serial !== null && words.serial(scanned.serial),
    ]
      .filter((fact) => fact !== false)
      .join(', '),
  );
}

/** What the symbol said, to be typed over, for a symbol that does not fit its package. */
function withoutSymbol(line: LineDraft): Partial<LineDraft> {
  const { scanned } = line;
  if (scanned === null) return {};
  const isMonth = scanned.useByPrecision === 'month';
  return {
    scanned: null,
    contentCount: null,
    piecesEach: String(piecesInOne(line)),
    lotCode: scanned.lotCode ?? line.lotCode,
    useBy: scanned.useBy === null ? line.useBy : isMonth ? scanned.useBy.slice(0, 7) : scanned.useBy,
    manufacturedOn: scanned.producedOn ?? line.manufacturedOn,
  };
}
