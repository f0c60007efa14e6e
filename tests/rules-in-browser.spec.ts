import { existsSync, readdirSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
import { resolve } from 'node:path';
import vm from 'node:vm';
import { build, type Plugin, type Rolldown } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import type { readSymbol } from '../src/catalogue/barcode.js';
import type { judgeShelfLife } from '../src/stock/shelf-life.js';

/** Files of rules that need no spec beside them, and why. */
const withoutSpec: Record<string, string> = {
  'src/alerts/channels/channel-message.ts': 'a type',
  'src/alerts/channels/send-failure.ts': 'a failure and what it means',
  'src/alerts/destinations/destination-settings.ts': 'types',
  'src/catalogue/gs1/application-identifier-format.ts': 'how the table is written; checked with the table',
  'src/catalogue/gs1/content-fault.ts': 'a type',
  'src/catalogue/gs1/country-codes.ts': 'data',
  'src/catalogue/gs1/coupon-checks.ts': 'two of the content checks, checked in content-checks.spec.ts',
  'src/catalogue/gs1/currency-codes.ts': 'data',
  'src/catalogue/gs1/element.ts': 'types, and how an error is put together',
  'src/catalogue/gs1/identifiers-of-amounts.ts': 'data, checked in application-identifiers.spec.ts',
  'src/catalogue/gs1/identifiers-of-attributes.ts': 'data, checked in application-identifiers.spec.ts',
  'src/catalogue/gs1/identifiers-of-items.ts': 'data, checked in application-identifiers.spec.ts',
  'src/catalogue/gs1/identifiers-of-logistics.ts': 'data, checked in application-identifiers.spec.ts',
  'src/catalogue/gs1/identifiers-of-measures.ts': 'data, checked in application-identifiers.spec.ts',
  'src/catalogue/gs1/identifiers-of-services.ts': 'data, checked in application-identifiers.spec.ts',
  'src/catalogue/gs1/international-bank-account-number.ts':
    'one of the content checks, checked in content-checks.spec.ts',
  'src/catalogue/gs1/package-types.ts': 'data',
  'src/catalogue/vocabulary.ts': 'words',
  'src/clients/sealing-contexts.ts': 'names of sealing contexts',
  'src/identity/sign-in/sign-in-method.ts': 'words',
  'src/recalls/notice-files/notice-columns.ts': 'words, checked in notice-table.spec.ts',
  'src/recalls/notice-reading/code-reader.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/notice-reading/expiry-reader.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/notice-reading/number-reader.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/notice-reading/numbering-reader.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/notice-reading/product-reader.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/notice-reading/reading-state.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/notice-reading/table-reader.ts': 'a part of the walk, checked in notice-walk.spec.ts',
  'src/recalls/containers/container-standing.ts': 'words, and what they are called in SQL',
  'src/recalls/messages/art-36-elements.ts': 'data, checked in prepared-message.spec.ts',
  'src/recalls/messages/cfr-7-49-elements.ts': 'data, checked in prepared-message.spec.ts',
  'src/recalls/messages/legal-element.ts': 'a type',
  'src/recalls/messages/message-facts.ts': 'types',
  'src/recalls/messages/message-texts.ts': 'types of the texts, checked in prepared-message.spec.ts',
  'src/recalls/messages/texts-de.ts': 'words, checked in prepared-message.spec.ts',
  'src/recalls/messages/texts-en.ts': 'words, checked in prepared-message.spec.ts',
  'src/recalls/vocabulary.ts': 'words',
  'src/reorder/claims/vocabulary.ts': 'words',
  'src/reorder/decision/basket-figures.ts': 'a part of the decision, checked in basket.spec.ts',
  'src/reorder/decision/basket-result.ts': 'types',
  'src/reorder/decision/batch-cost.ts': 'a part of the base policy, checked in base-policy.spec.ts',
  'src/reorder/decision/decision-facts.ts': 'types',
  'src/reorder/decision/decision-notes.ts': 'types',
  'src/reorder/decision/item-decision-result.ts': 'types',
  'src/reorder/decision/outlook.ts': 'a part of the decision, checked in item-decision.spec.ts',
  'src/reorder/decision/range-choice.ts': 'words',
  'src/reorder/demand/demand-facts.ts': 'types',
  'src/reorder/demand/demand-model.ts': 'types',
  'src/reorder/item.ts': 'types, and what is supposed of a use',
  'src/reorder/plan/vocabulary.ts': 'words',
  'src/reorder/projection/item-facts.ts': 'types',
  'src/reorder/projection/path-stock.ts': 'the stock of a simulation, checked in simulate.spec.ts',
  'src/reorder/projection/simulation-bounds.ts': 'what a simulation refuses, checked in simulate.spec.ts',
  'src/reorder/purchase-orders/order-states.ts': 'words',
  'src/reorder/replay/replay-assumptions.ts': 'sentences',
  'src/reorder/settings/planning-assumptions.ts': 'numbers, checked in effective-settings.spec.ts',
  'src/reorder/supply/pack-price.ts': 'a type',
  'src/reorder/supply/supply-facts.ts': 'types',
  'src/sessions/bookings/booking-columns.ts': 'words, checked in booking-row.spec.ts',
  'src/sessions/reason-facts.ts': 'a type, checked in tray-rules.spec.ts',
  'src/sessions/sealing-contexts.ts': 'names of sealing contexts',
  'src/sessions/tray-thing.ts': 'the facts of the tray, checked in tray-rules.spec.ts',
  'src/sessions/vocabulary.ts': 'words',
  'src/stock/lot-matching/lot-facts.ts': 'types',
  'src/stock/lot-matching/lot-scope.ts': 'types',
  'src/stock/lot-matching/match-reasons.ts': 'words, checked in grade-lot.spec.ts',
  'src/stock/opening-stock/opening-stock-columns.ts': 'words, checked in opening-stock-preview.spec.ts',
  'src/stock/photos/photo-media-type.ts': 'words',
  'src/stock/vocabulary.ts': 'words',
};

interface CruiserConfig {
  forbidden: { name: string; from: { path: string } }[];
}

/** The files that the import rules take for rules: one definition for both. */
function ruleFiles(): string[] {
  const config = createRequire(import.meta.url)('../.dependency-cruiser.cjs') as CruiserConfig;
  const path = config.forbidden.find(({ name }) => name === 'rules-import-only-rules')?.from.path;
  if (path === undefined) throw new Error('The import rules no longer say what a rule is.');
  const isRule = new RegExp(path);
  return readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((file) => `src/${file}`)
    .filter((file) => isRule.test(file))
    .sort();
}

/** A script that is on no disk. */
const entry = resolve('all-rules.js');

/** All rules under the names of their files; whatever only Node has is refused instead of being stubbed. */
function allRules(files: readonly string[]): Plugin {
  return {
    name: 'all-rules',
    enforce: 'pre',
    resolveId(source, importer) {
      if (source === entry) return entry;
      if (isBuiltin(source)) throw new Error(`${importer} imports ${source}, which no browser has.`);
      return null;
    },
    load(id) {
      if (id !== entry) return null;
      return files
        .map((file) => `export * as ${JSON.stringify(file)} from ${JSON.stringify(resolve(file))};`)
        .join('\n');
    },
  };
}

/** One script for the browser, made in memory, that leaves all rules in the variable `rules`. */
async function bundle(files: readonly string[]): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    plugins: [allRules(files)],
    build: {
      write: false,
      minify: false,
      target: 'es2022',
      lib: { entry, formats: ['iife'], name: 'rules', fileName: 'rules' },
    },
  });
  const outputs = (Array.isArray(result) ? result : [result]) as Rolldown.RolldownOutput[];
  const chunks = outputs.flatMap(({ output }) => output);
  const [script] = chunks;
  if (script?.type !== 'chunk' || chunks.length !== 1) throw new Error('More than one script was made.');
  return script.code;
}

type BundledRules = Record<string, Record<string, unknown>>;

describe('the rules in a browser', () => {
  const files = ruleFiles();
  let rules: BundledRules;

  beforeAll(async () => {
    // A context of its own has what the language has, and nothing of Node's.
    const context = vm.createContext({});
    expect(vm.runInContext('typeof process + typeof Buffer + typeof require', context)).toBe(
      'undefined'.repeat(3),
    );
    vm.runInContext(await bundle(files), context);
    rules = vm.runInContext('rules', context) as BundledRules;
  });

  /** What a file of rules exports. */
  function exported<Rule>(file: string, name: string): Rule {
    const rule = rules[file]?.[name];
    if (typeof rule !== 'function') throw new Error(`${file} exports no function ${name}.`);
    return rule as Rule;
  }

  it('are all there', () => {
    expect(files.length).toBeGreaterThan(40);
    expect(Object.keys(rules).sort()).toEqual(files);
  });

  it('judge a bottle opened longer ago than its shelf life as open too long', () => {
    const judge = exported<typeof judgeShelfLife>('src/stock/shelf-life.ts', 'judgeShelfLife');
    const facts = {
      useByLastDay: '2027-01-31',
      openedAt: '2025-08-31T10:00:00.000Z',
      openedLife: 'P6M',
      assumedOpenedLife: null,
      usableThrough: null,
    };
    // 31 August and six months is the last of February.
    expect(judge(facts, '2026-02-28T22:59:00.000Z', 'Europe/Vienna')).toMatchObject({
      status: 'usable',
      lastDay: '2026-02-28',
      daysLeft: 0,
    });
    expect(judge(facts, '2026-02-28T23:00:00.000Z', 'Europe/Vienna')).toMatchObject({
      status: 'open too long',
      daysLeft: -1,
    });
  });

  it('read a GS1 symbol', () => {
    const read = exported<typeof readSymbol>('src/catalogue/barcode.ts', 'readSymbol');
    expect(
      read({ text: '0109501101530003172701311012AB', symbologyIdentifier: ']d2' }, '2026-03-01'),
    ).toMatchObject({ kind: 'gs1', gtin14: '09501101530003', lotCode: '12AB' });
  });

  it('refuse Node modules when one creeps in', async () => {
    await expect(bundle(['src/platform/config.ts'])).rejects.toThrow(/node:\w+, which no browser has/);
  });
});

describe('a file of rules', () => {
  it.each(ruleFiles().filter((file) => withoutSpec[file] === undefined))(
    'has a spec beside it: %s',
    (file) => {
      expect(existsSync(file.replace(/[.]ts$/, '.spec.ts'))).toBe(true);
    },
  );

  it('is excepted only while it is there and has no spec', () => {
    const outdated = Object.keys(withoutSpec).filter(
      (file) => !existsSync(file) || existsSync(file.replace(/[.]ts$/, '.spec.ts')),
    );
    expect(outdated).toEqual([]);
  });
});
