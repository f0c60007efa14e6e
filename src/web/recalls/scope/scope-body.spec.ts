import fc from 'fast-check';
import { expect, it } from 'vitest';
import { scopeOf } from '../../../recalls/scope/scope-of-request.js';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import { bodyOf } from './scope-body.js';

const day = fc.constantFrom('2026-01-05', '2026-10-31');
const span = fc.oneof(
  fc.record({ from: fc.constant('2026-01-01'), through: day }),
  fc.record({ from: day, through: fc.constant(null) }),
  fc.record({ from: fc.constant(null), through: day }),
);
const text = fc.string({ minLength: 1, maxLength: 8 });
const useBy = fc.option(span);
const term = fc.oneof(
  fc.constant({ kind: 'all lots' as const }),
  fc.record({ kind: fc.constant('code' as const), code: text, useBy }),
  fc.record({ kind: fc.constant('code range' as const), from: text, through: text, useBy }),
  fc.record({ kind: fc.constant('use-by' as const), useBy: span }),
  fc.record({ kind: fc.constant('manufactured' as const), manufactured: span }),
);
const scope: fc.Arbitrary<LotScope> = fc.record({
  items: fc.array(
    fc.record({
      makerName: fc.option(text),
      productName: text,
      shade: fc.option(text),
      gtins: fc.uniqueArray(text, { maxLength: 3 }),
      productIds: fc.uniqueArray(text, { maxLength: 3 }),
      lots: fc.array(term, { maxLength: 5 }),
      openEnded: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  ),
});

it('is read by the service as the very scope that was settled', () => {
  fc.assert(
    fc.property(scope, (settled) => {
      expect(scopeOf(bodyOf(settled))).toEqual({ scope: settled, faults: [] });
    }),
  );
});
