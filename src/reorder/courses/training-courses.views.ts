/** A training course for which the kit list of a procedure is needed once for each trainee. */
export class TrainingCourseView {
  id: string;
  procedureId: string;
  procedureName: string;
  /** YYYY-MM-DD. */
  heldOn: string;
  trainees: number;
  /** The studio's own name or number of it. */
  reference: string | null;
  version: number;
  createdAt: string;
  cancelledAt: string | null;
}

export class TrainingCoursePageView {
  items: TrainingCourseView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}
