/** How well uses were recorded in a studio, over the sessions of a period. Shares are of `uses`, cut to a tenth. */
export class RecordQualityView {
  studioId: string;
  studioName: string;
  /** First and last local day of the sessions. */
  from: string;
  through: string;
  uses: number;
  /** Recorded afterwards, from memory or from paper. */
  late: number;
  latePercent: number | null;
  /** The lot was picked from a list, neither read nor typed. */
  picked: number;
  pickedPercent: number | null;
  /** Reversed, since it was recorded by mistake. */
  corrected: number;
  correctedPercent: number | null;
  /** Used although it had been refused. */
  againstRefusal: number;
  againstRefusalPercent: number | null;
}

export class ChainRecordQualityView {
  studios: RecordQualityView[];
}
