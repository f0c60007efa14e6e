/** Notices whose lots are known because they were made from them: what was written must be found, never narrower. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propertySettings } from '../../../tests/support/property-settings.js';
import { noticeStructures, type WrittenLot, writeNotice } from '../../../tests/support/written-notices.js';
import type { DaySpan, ScopeItem } from '../../stock/lot-matching/lot-scope.js';
import { readNotice } from './notice-reading.js';

const today = '2026-11-26';

/** Whether a span that was read leaves nothing out of what was written. */
function holds(read: DaySpan | null, written: DaySpan | null): boolean {
  if (read === null) return true;
  if (written === null) return false;
  return (read.from ?? '') <= (written.from ?? '') && (read.through ?? '9') >= (written.through ?? '9');
}

function isFound(items: readonly ScopeItem[], lot: WrittenLot, written: DaySpan | null): boolean {
  return items.some(({ lots }) =>
    lots.some((term) => {
      if (term.kind === 'code')
        return lot.through === null && term.code === lot.from && holds(term.useBy, written);
      return (
        term.kind === 'code range' &&
        term.from === lot.from &&
        term.through === lot.through &&
        holds(term.useBy, written)
      );
    }),
  );
}

describe('notices made from known lots', () => {
  it(
    'give back every lot that was written, in its product, never narrower',
    () => {
      let lots = 0;
      let exactExpiries = 0;
      let expiries = 0;
      let strangers = 0;
      fc.assert(
        fc.property(noticeStructures, (value) => {
          const { text, items } = writeNotice(value);
          const { scope } = readNotice(text, { today });
          const written = new Set(
            items.flatMap((item) =>
              item.groups.flatMap((group) => group.lots.flatMap(({ from, through }) => [from, through])),
            ),
          );
          for (const item of items) {
            const named =
              item.name === '' ? scope.items : scope.items.filter((one) => one.productName === item.name);
            expect(named.length, `${item.name} in:\n${text}`).toBeGreaterThan(0);
            if (item.openEnded)
              expect(
                named.some(({ openEnded }) => openEnded),
                `open-ended:\n${text}`,
              ).toBe(true);
            for (const group of item.groups) {
              for (const lot of group.lots) {
                lots += 1;
                const same = items
                  .filter((other) => other.name === item.name)
                  .flatMap((other) => other.groups)
                  .filter((other) =>
                    other.lots.some(({ from, through }) => from === lot.from && through === lot.through),
                  );
                const ok = isFound(named, lot, group.useBy?.span ?? null) || same.length > 1;
                if (!ok)
                  expect.fail(
                    `${lot.from} ${lot.through ?? ''} of ${item.name} in:\n${text}\n${JSON.stringify(scope)}`,
                  );
                if (group.useBy !== null) {
                  expiries += 1;
                  const { from, through } = group.useBy.span;
                  if (
                    named.some((one) =>
                      one.lots.some(
                        (term) =>
                          'useBy' in term && term.useBy?.from === from && term.useBy?.through === through,
                      ),
                    )
                  )
                    exactExpiries += 1;
                }
              }
            }
          }
          for (const item of scope.items) {
            for (const term of item.lots)
              if (term.kind !== 'code' || !written.has(term.code)) strangers += term.kind === 'code' ? 1 : 0;
          }
        }),
        propertySettings('notices made from known lots', 2_000),
      );
      process.stdout.write(
        `  ${lots} lots found, none missed; ${exactExpiries} of ${expiries} expiries exactly; ${strangers} codes that were not written\n`,
      );
      expect(strangers / lots).toBeLessThan(0.01);
      expect(exactExpiries / expiries).toBeGreaterThan(0.95);
    },
    process.env.SOAK ? 600_000 : 60_000,
  );
});
