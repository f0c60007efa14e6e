/** How a series of counts behaves; `no demand` when every period is 0. */
export type SeriesClass = 'smooth' | 'erratic' | 'intermittent' | 'lumpy' | 'no demand';

/** Mean interval between periods with demand, above which a series is intermittent or lumpy. */
const ADI_CUT_OFF = 1.32;
/** Squared coefficient of variation of the sizes, above which a series is erratic or lumpy. */
const CV2_CUT_OFF = 0.49;

export interface ClassifiedSeries {
  class: SeriesClass;
  /** Periods over periods with demand; null when there is no demand. */
  adi: number | null;
  /** Sample variance of the non-zero sizes over their squared mean; null with fewer than two of them. */
  cv2: number | null;
}

/**
 * The class of a series by its intervals and sizes.
 *
 * Syntetos, Boylan & Croston 2005, J. Oper. Res. Soc. 56:495–503. A single size does not vary: it counts as 0.
 */
export function classifySeries(series: ArrayLike<number>): ClassifiedSeries {
  let sizes = 0;
  let sum = 0;
  for (let index = 0; index < series.length; index++) {
    const size = series[index] ?? 0;
    if (size > 0) {
      sizes++;
      sum += size;
    }
  }
  if (sizes === 0) return { class: 'no demand', adi: null, cv2: null };

  const mean = sum / sizes;
  let squares = 0;
  for (let index = 0; index < series.length; index++) {
    const size = series[index] ?? 0;
    if (size > 0) squares += (size - mean) ** 2;
  }
  const adi = series.length / sizes;
  const cv2 = sizes < 2 ? null : squares / (sizes - 1) / mean ** 2;
  return { class: className(adi > ADI_CUT_OFF, (cv2 ?? 0) > CV2_CUT_OFF), adi, cv2 };
}

function className(sparse: boolean, uneven: boolean): SeriesClass {
  if (sparse) return uneven ? 'lumpy' : 'intermittent';
  return uneven ? 'erratic' : 'smooth';
}
