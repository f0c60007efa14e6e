import type { LotView } from '../../../stock/lot-list.views.js';
import type { CodeState, LotCodeKind } from '../../../stock/vocabulary.js';
import type { LotCorrection } from './lots.requests.js';

/** What a person says is printed on a lot; empty: nothing. */
export interface LotForm {
  codeState: CodeState;
  codes: { kind: LotCodeKind; code: string }[];
  useBy: string;
  manufacturedOn: string;
  reason: string;
}

type Recorded = Pick<LotView, 'codeState' | 'codes' | 'useBy' | 'useByPrecision' | 'manufacturedOn'>;

/** What is on record of a lot, as it is printed: a month's date without its day. */
export function asPrinted({ codeState, codes, useBy, useByPrecision, manufacturedOn }: Recorded): LotForm {
  const length = { day: 10, month: 7, year: 4, 'none printed': 0 }[useByPrecision];
  const standing = codes.filter(({ supersededAt }) => supersededAt === null);
  return {
    codeState,
    codes: standing.map(({ kind, code }) => ({ kind, code })),
    useBy: (useBy ?? '').slice(0, length),
    manufacturedOn: manufacturedOn ?? '',
    reason: '',
  };
}

/** What differs from the record, and why; what was not touched is left out, so that it stays as it is. */
export function lotCorrection(lot: Recorded, form: LotForm): LotCorrection {
  const before = asPrinted(lot);
  const codes = form.codes
    .map(({ kind, code }) => ({ kind, code: code.trim() }))
    .filter(({ code }) => code !== '');
  const isSame = JSON.stringify([before.codeState, before.codes]) === JSON.stringify([form.codeState, codes]);
  const orNull = (text: string) => (text.trim() === '' ? null : text.trim());
  return {
    ...(!isSame && (form.codeState === 'printed' ? { codes } : { codeState: form.codeState })),
    ...(form.useBy.trim() !== before.useBy && { useBy: orNull(form.useBy) }),
    ...(form.manufacturedOn.trim() !== before.manufacturedOn && {
      manufacturedOn: orNull(form.manufacturedOn),
    }),
    reason: form.reason,
  };
}
