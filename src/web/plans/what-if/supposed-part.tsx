import type { WhatIfView } from '../../../reorder/plan/plans.views.js';
import { useProcedures } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenPerMille } from '../figures/written-chance.js';

/** What was supposed to be different, in words. */
export function SupposedPart({
  studioId,
  whatIf,
  label,
}: {
  studioId: string;
  whatIf: WhatIfView | null;
  /** What the one item is called that it is about; undefined: that is not known. */
  label: string | undefined;
}) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.whatIf;
  const procedures = useProcedures(studioId).answer;
  if (whatIf === null) return null;
  const share = (perMille: number) => writtenPerMille(perMille, language);
  const change = (perMille: number) =>
    new Intl.NumberFormat(language, {
      style: 'percent',
      maximumFractionDigits: 1,
      signDisplay: 'exceptZero',
    }).format((perMille - 1000) / 1000);
  const number = (amount: number) => new Intl.NumberFormat(language).format(amount);
  const signed = (number: number) =>
    new Intl.NumberFormat(language, { signDisplay: 'exceptZero' }).format(number);
  const { serviceTargetPerMille, leadTimeExtraDays, leadTimePerMille, pricePerMille, bookingsPerMille } =
    whatIf;
  const supposed = [
    ...(whatIf.itemKey === null ? [] : [label === undefined ? words.oneItem : words.only(label)]),
    ...(serviceTargetPerMille === null ? [] : [words.supposed.target(share(serviceTargetPerMille))]),
    ...(leadTimeExtraDays === null
      ? []
      : [
          words.supposed.leadTimeDays(
            number(Math.abs(leadTimeExtraDays)),
            Math.abs(leadTimeExtraDays) === 1,
            leadTimeExtraDays > 0,
          ),
        ]),
    ...(leadTimePerMille === null
      ? []
      : [words.supposed.leadTime(share(Math.abs(leadTimePerMille - 1000)), leadTimePerMille > 1000)]),
    ...(pricePerMille === null ? [] : [words.supposed.price(change(pricePerMille))]),
    ...(bookingsPerMille === null ? [] : [words.supposed.bookings(change(bookingsPerMille))]),
    ...whatIf.extraSessions.map(({ procedureId, on, sessions }) =>
      words.supposed.sessions(
        signed(sessions),
        procedures?.find(({ id }) => id === procedureId)?.name ?? words.aProcedure,
        writtenDay(on, language),
        Math.abs(sessions) === 1,
      ),
    ),
  ];
  return <p>{supposed.join(', ')}</p>;
}
