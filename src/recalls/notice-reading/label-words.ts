/**
 * The words by which notices say what follows: English as in the openFDA test data [P], German, French and Spanish as
 * is common practice [C].
 */
import type { Token } from './tokens.js';

export type LabelRole =
  | 'lot'
  | 'use-by'
  | 'manufactured'
  | 'maker'
  | 'product'
  | 'shade'
  | 'gtin'
  | 'reference'
  | 'issued on'
  | 'classification'
  | 'risk'
  | 'remedy'
  | 'all lots'
  | 'open-ended'
  | 'exception'
  /** Numbers of another kind follow, which are no lots. */
  | 'other number';

/**
 * How much must follow for the word to be a label: `plain` nothing; `colon` a colon; `number` a colon, a number sign or
 * a word that holds a digit, because the word also has an everyday meaning.
 */
type Strictness = 'plain' | 'colon' | 'number';

interface Entry {
  role: LabelRole;
  strictness: Strictness;
  /** Not English, so that dates are written with the day first. */
  dayFirst: boolean;
}

export interface LabelHit extends Entry {
  /** The token after the label and the signs that belong to it (colon, number sign, full stop). */
  next: number;
  /** The last token of the words themselves. */
  last: number;
  colon: boolean;
}

interface Node {
  entry: Entry | null;
  words: Map<string, Node>;
}

const english: Partial<Record<LabelRole, Partial<Record<Strictness, string>>>> = {
  lot: {
    plain:
      'lot|lots|lot no|lot nos|lots no|lot num|lot number|lot numbers|lots number|lots numbers|lot code|lot codes|lot id|lot ref|' +
      'batch|batches|batch no|batch nos|batch num|batch number|batch numbers|batch code|batch codes|lot batch|lot batch number|' +
      'lot batch numbers|batch lot|batch lot number|batch lot numbers|batch lot no|lot batch no|code info|code information|' +
      'more code info|batchnumber|batchnumber barcode|production lot|production batch|manufacturing lot|b n|lot and batch',
    number: 'code|codes|unit|units|batch reference',
    colon: 'ln|bn',
  },
  'use-by': {
    plain:
      'exp|exp date|exp dates|expiry|expiry date|expiry dates|expiration|expiration date|expiration dates|expires|expires on|' +
      'expiring|expiring on|expired|use by|use by date|use by dates|use before|use before date|best by|best by date|best by dates|' +
      'best before|best before date|best before dates|best before end|best if used by|best if used by date|' +
      'best if used by dates|best if used before|bbd|bbe|sell by|sell by date',
    colon: 'ed',
  },
  manufactured: {
    plain:
      'manufactured|manufactured on|manufacture date|manufacture dates|date of manufacture|dates of manufacture|manufacturing date|' +
      'manufacturing dates|manufacturing dated|mfg|mfg date|mfd|mfd date|produced|produced on|production date|production dates|' +
      'date produced|date of production|made|made on|packed|packed on|dom|date manufactured',
  },
  maker: {
    colon:
      'maker|manufacturer|manufacturers|manufactured by|made by|produced by|brand|brand name|company|company name|firm|recalling firm|' +
      'legal manufacturer|responsible person|makername|maker name',
  },
  product: {
    colon:
      'product|products|product name|product names|products affected|affected product|affected products|name of product|name of the product|' +
      'product description|description of product|item|items|article|trade name|recalled product|recalled products|' +
      'productname|device name|affected items',
  },
  shade: { colon: 'shade|shades|colour|colours|color|colors|shade name|colour name|color name|tone' },
  gtin: {
    plain:
      'gtin|gtins|gtin 14|gtin 13|gtin 12|gtin 8|ean|eans|ean 13|ean 8|ean code|upc|upcs|upc code|upc codes|upc a|upc number|barcode|barcodes|' +
      'bar code|bar codes|udi di',
  },
  reference: {
    colon:
      'reference|reference number|reference no|ref|our reference|our ref|recall number|recall no|recall reference|recall id|notice number|' +
      'notice no|notice reference|case number|casenumber|alert number|notification number|fsca reference|fsca ref',
    number: 'recall',
  },
  'issued on': {
    colon:
      'date|date of notice|notice date|issued|issued on|date of issue|issue date|date issued|published|published on|publication date|' +
      'report date|recall date|recall initiation date|date of recall',
  },
  classification: { colon: 'classification|recall class|class|risk level|level|recall classification' },
  risk: {
    colon:
      'risk|risks|hazard|hazards|danger|risk type|risktype|health hazard|reason|reason for recall|reason for the recall|reason of recall|problem|' +
      'defect|description of the problem|health risk',
  },
  remedy: {
    colon:
      'remedy|what to do|what you should do|what should you do|action|actions|action required|required action|actions to be taken|measures|' +
      'measures taken|corrective action|instructions|next steps|immediate action|advice',
  },
  'all lots': {
    plain:
      'all lots|all lot|all batches|all lot numbers|all batch numbers|all lot codes|all lots and batches|all batches and lots|any lot|any batch|every lot|' +
      'every batch|each lot|all products|all product|all codes|all units|entire stock|entire production|' +
      'all of the lots|all the lots|lots all|all unexpired lots|all lots within expiry|all lots and expiration dates|' +
      'all lot and batch numbers|all lots batches|all production|whole production|all serial numbers|all in date lots',
  },
  'open-ended': {
    plain:
      'not limited to|not limit to|not be limited to|not restricted to|limited to but not|without limitation|not exhaustive|among others|and others|amongst others|' +
      'and possibly others|possibly others|other lots may|other batches may|further lots may|further batches may|' +
      'additional lots may|additional batches may|more lots may|and other lots|and other batches|or other lots|or other batches|' +
      'may include other lots|may include further lots|and further lots|list is not complete|list may be incomplete|' +
      'other lots cannot be excluded|other lots could be|additional lots could be|non exhaustive|lots include|batches include|' +
      'lots may include|batches may include|lots including|batches including|list is not final|list may be extended|' +
      'and potentially others|potentially other lots|and more lots|lots such as|batches such as',
  },
  exception: {
    plain:
      'except|except for|excepting|excluding|with the exception of|other than|apart from|not affected|are not affected|is not affected|' +
      'unaffected|not concerned|not included|not subject to',
  },
  'other number': {
    plain:
      'ndc|nsn|item no|item nos|item number|item numbers|part number|part numbers|part no|p n|product code|product codes|product no|product number|' +
      'catalogue number|catalog number|catalogue no|catalog no|cat no|model|model no|model number|serial|serial no|serial number|serial numbers|' +
      'tel|telephone|phone|fax|call|page|cas|cas no|ci|c i|pigment|zip|quantity|qty|product quantity|net wt|net weight|software version|version|' +
      'article no|article number|sku|event id|distribution|distribution pattern|postal code|iso|en iso|regulation|directive|order no|' +
      'order number|customer no|customer number|invoice|invoice no|hotline|extension|step|section|vat no|box of|pack of|size',
  },
};

const others: Partial<Record<LabelRole, Partial<Record<Strictness, string>>>> = {
  lot: {
    plain:
      // German
      'charge nr|charge no|charge nummer|charge n nr|chargen|chargen nr|chargen nummer|chargennr|chargennummer|chargennummern|chargenbezeichnung|chargencode|' +
      'ch b|ch bez|chb|ch nr|los nr|los nummer|losnr|losnummer|losnummern|lot nr|lot nummer|lotnummer|lotnummern|lose nr|' +
      // French
      'n de lot|no de lot|numero de lot|numeros de lot|numeros de lots|lot n|lots n|nos de lot|' +
      // Spanish, Portuguese, Italian, Dutch
      'lote|lotes|n de lote|no de lote|numero de lote|numeros de lote|lote n|lotes n|lote no|lotto|lotti|numero di lotto|numeri di lotto|partijnummer|partijnummers|' +
      'batchnummer|batchnummern|batch nr|partida',
    number: 'charge|los|lose|partij|code lot|code barre lot',
  },
  'use-by': {
    plain:
      'mhd|mindesthaltbarkeit|mindesthaltbarkeitsdatum|mindestens haltbar bis|haltbar bis|verfall|verfalldatum|verfallsdatum|verfallsdaten|verfalldaten|' +
      'verwendbar bis|verw bis|zu verwenden bis|ablaufdatum|ablauf|' +
      'date d expiration|dates d expiration|peremption|date de peremption|dates de peremption|expire le|expirant le|a utiliser avant|' +
      'a consommer avant|a consommer de preference avant|ddm|dlc|dluo|date limite|' +
      'caducidad|fecha de caducidad|fechas de caducidad|cad|caduca|vencimiento|fecha de vencimiento|vence|consumir antes de|usar antes de|' +
      'consumo preferente|fecha de expiracion|scadenza|data di scadenza|scad|vervaldatum|tht|houdbaar tot|validade|data de validade',
  },
  manufactured: {
    plain:
      'herstelldatum|herstellungsdatum|herstellungsdaten|hergestellt|hergestellt am|hergestellt zwischen|produziert|produziert am|produktionsdatum|' +
      'date de fabrication|dates de fabrication|fabrique|fabriques|fabriquee|fabriquees|fabrique le|fab|' +
      'fecha de fabricacion|fechas de fabricacion|fabricado|fabricados|fabricada|fabricadas|elaborado|fecha de elaboracion|data di produzione|prodotto il',
  },
  maker: {
    colon:
      'hersteller|herstellerin|marke|firma|hergestellt von|fabricant|marque|fabrique par|fabricante|marca|fabricado por|produttore|fabrikant|merk',
  },
  product: {
    colon:
      'produkt|produkte|produktname|produktbezeichnung|artikel|bezeichnung|betroffenes produkt|betroffene produkte|' +
      'produit|produits|nom du produit|designation|article concerne|produits concernes|producto|productos|nombre del producto|prodotto|denominazione',
  },
  shade: { colon: 'farbton|farbe|farbtone|nuance|teinte|teintes|couleur|tono|tonos|colore|kleur' },
  gtin: {
    plain: 'ean nummer|strichcode|barcode nummer|code barres|code barre|codigo de barras|codice a barre',
  },
  reference: {
    colon:
      'aktenzeichen|referenz|referenznummer|ruckrufnummer|unser zeichen|meldenummer|numero de reference|reference du rappel|' +
      'referencia|numero de referencia|riferimento',
  },
  'issued on': {
    colon:
      'datum|ausgabedatum|datum der meldung|stand|date du rappel|date de publication|publie le|fecha|fecha de publicacion|data',
  },
  classification: { colon: 'klasse|ruckrufklasse|risikostufe|classe|clase' },
  risk: {
    colon:
      'gefahr|gefahren|risiko|risiken|grund|ruckrufgrund|grund des ruckrufs|mangel|risque|risques|motif|motif du rappel|danger encouru|' +
      'riesgo|riesgos|peligro|motivo|motivo de la retirada|rischio|pericolo',
  },
  remedy: {
    colon:
      'massnahme|massnahmen|was ist zu tun|was tun|abhilfe|vorgehen|handlungsanweisung|que faire|conduite a tenir|mesures|mesure|' +
      'que hacer|medidas|medida|acciones|cosa fare|misure',
  },
  'all lots': {
    plain:
      'alle chargen|alle lose|alle lots|alle chargennummern|samtliche chargen|samtliche lose|alle produkte|jede charge|' +
      'tous les lots|tous lots|toutes les references|tous les produits|l ensemble des lots|' +
      'todos los lotes|todos lotes|todos los productos|tutti i lotti|alle partijen|todos os lotes',
  },
  'open-ended': {
    plain:
      'unter anderem|u a|nicht beschrankt auf|nicht abschliessend|nicht ausschliesslich|nicht nur auf|und weitere|sowie weitere|weitere chargen|' +
      'andere chargen konnen|insbesondere die chargen|' +
      'sans s y limiter|sans toutefois s y limiter|non limite a|non limitee a|entre autres|liste non exhaustive|et d autres lots|notamment les lots|' +
      'no limitado a|no limitados a|no limitada a|no limitadas a|sin limitarse a|entre otros|entre otras|lista no exhaustiva|y otros lotes|tra gli altri|' +
      'ma non limitato a|onder andere|onder meer',
  },
  exception: {
    plain:
      'ausser|ausgenommen|mit ausnahme von|mit ausnahme der|nicht betroffen|sauf|a l exception de|hormis|non concernes|non concerne|excepto|salvo|' +
      'con excepcion de|no afectados|no afectado|tranne|escluso|esclusi|behalve',
  },
  'other number': {
    plain:
      'artikel nr|artikelnr|artikelnummer|art nr|bestellnummer|seriennummer|telefon|menge|pzn|ref fabricant|num tel|telefono|seite',
  },
};

const longestPhrase = 8;
const root: Node = { entry: null, words: new Map() };
for (const [table, dayFirst] of [
  [english, false],
  [others, true],
] as const) {
  for (const [role, phrases] of Object.entries(table) as [LabelRole, Partial<Record<Strictness, string>>][]) {
    for (const [strictness, words] of Object.entries(phrases) as [Strictness, string][]) {
      for (const phrase of words.split('|')) plant(phrase, { role, strictness, dayFirst });
    }
  }
}

const beginnings = root.words;

function plant(phrase: string, entry: Entry): void {
  let node = root;
  for (const word of phrase.split(' ')) {
    let next = node.words.get(word);
    if (next === undefined) {
      next = { entry: null, words: new Map() };
      node.words.set(word, next);
    }
    node = next;
  }
  node.entry ??= entry;
}

const hasJoiner = /[-./_]/;

function partsOf({ plain }: Token): string[] {
  return hasJoiner.test(plain) ? plain.split(hasJoiner) : [plain];
}

const longestWord = 40;
const between = new Set(['.', '-', "'", '\u00B0', '\u00BA', '/', '&', '_', '(', ')']);
const asWords: Record<string, string> = { '&': 'and' };

/**
 * The label that begins at a token, the longest there is; null when none does. Words of a label may be parted by a
 * full stop, a hyphen, a slash or the like: `Ch.-B.`, `Lot/Batch No.`, `use-by`.
 */
export function labelAt(tokens: readonly Token[], index: number): LabelHit | null {
  const first = tokens[index];
  if (first === undefined || first.kind !== 'word' || first.text.length > longestWord) return null;
  // Most words begin no label.
  if (!beginnings.has(first.plain) && !hasJoiner.test(first.plain)) return null;
  let node: Node | undefined = root;
  let best: { entry: Entry; last: number } | null = null;
  let at = index;
  for (let words = 0; words < longestPhrase && node !== undefined; ) {
    const token: Token | undefined = tokens[at];
    if (token === undefined || token.kind === 'blank line' || token.kind === 'line end') break;
    if (token.kind === 'sign') {
      if (!between.has(token.text) || at === index) break;
      const word: string | undefined = asWords[token.text];
      const through: Node | undefined = word === undefined ? undefined : node.words.get(word);
      if (through !== undefined) node = through;
      at += 1;
      if (at > index + 2 * longestPhrase) break;
      continue;
    }
    if (token.text.length > longestWord) break;
    for (const part of partsOf(token)) {
      node = node?.words.get(part);
      words += 1;
    }
    if (node?.entry) best = { entry: node.entry, last: at };
    at += 1;
  }
  if (best === null) return null;
  return finish(tokens, best.entry, best.last);
}

const afterLabel = new Set([':', '#', '.', "'", '\u00B0', '\u00BA', '=', '"']);

function finish(tokens: readonly Token[], entry: Entry, last: number): LabelHit | null {
  let next = last + 1;
  let colon = false;
  let sign = false;
  for (let steps = 0; steps < 8; steps++) {
    const token = tokens[next];
    if (token?.kind === 'sign' && (afterLabel.has(token.text) || isPluralBracket(tokens, next))) {
      colon ||= token.text === ':' || token.text === '=';
      sign ||= token.text === '#';
      next += isPluralBracket(tokens, next) ? 3 : 1;
      continue;
    }
    // "Lot #'s:", "Lot(s)", "UPC #".
    if (token?.kind === 'word' && token.text === 's' && token.gap === 'none' && next > last + 1) next += 1;
    else break;
  }
  const following = tokens[next];
  const column = following === undefined || following.kind !== 'word' || following.gap === 'wide';
  if (entry.strictness === 'colon' && !colon && !(column && following?.gap === 'wide')) return null;
  if (entry.strictness === 'number' && !colon && !sign && !beginsCode(tokens, next)) return null;
  const { role, strictness, dayFirst } = entry;
  return { role, strictness, dayFirst, last, next, colon };
}

/** A word with a digit, or capitals before one: `AB 12-34`. */
function beginsCode(tokens: readonly Token[], index: number): boolean {
  const text = tokens[index]?.text ?? '';
  if (hasDigit(text)) return true;
  const capitals = text.length <= 6 && /^\p{Lu}+$/u.test(text);
  return capitals && tokens[index + 1]?.gap === 'space' && hasDigit(tokens[index + 1]?.text ?? '');
}

function isPluralBracket(tokens: readonly Token[], index: number): boolean {
  return (
    tokens[index]?.text === '(' &&
    /^(?:s|es|n|e)$/i.test(tokens[index + 1]?.text ?? '') &&
    tokens[index + 2]?.text === ')'
  );
}

export function hasDigit(text: string): boolean {
  return /\d/.test(text);
}

/** Whether a stretch of tokens is a label and nothing else, as in the head of a table. */
export function wholeLabel(tokens: readonly Token[], from: number, to: number): Entry | null {
  let node: Node | undefined = root;
  for (let index = from; index < to && index < from + 2 * longestPhrase; index++) {
    const token = tokens[index];
    if (token === undefined) return null;
    if (token.kind === 'sign') continue;
    for (const part of partsOf(token)) node = node?.words.get(part);
    if (node === undefined) return null;
  }
  return to > from && to <= from + 2 * longestPhrase ? (node?.entry ?? null) : null;
}
