import type { DrillScoreView } from '../../../recalls/drills/drills.views.js';
import { Figures } from '../../stock/figures.js';
import { useTexts } from '../../texts/texts.js';

/** How well a drill went. */
export function Score({ score }: { score: DrillScoreView }) {
  const texts = useTexts();
  const words = texts.drills;
  const share = (percent: number | null) =>
    percent === null
      ? words.nothingToCount
      : new Intl.NumberFormat(texts.language, { style: 'percent', maximumFractionDigits: 1 }).format(
          percent / 100,
        );
  return (
    <Figures
      figures={[
        { name: words.traced, value: share(score.tracedPercent), isMain: true },
        { name: words.balanced, value: share(score.balancedPercent) },
        { name: words.found, value: share(score.foundPercent) },
        {
          name: words.minutes,
          value: new Intl.NumberFormat(texts.language, { maximumFractionDigits: 1 }).format(score.minutes),
        },
      ]}
    />
  );
}
