import { ContainerView } from './container-list.views.js';

/** What was recorded of a container. */
export class ContainerChangeView {
  container: ContainerView;
  /** The new box that pieces were moved into; else null. */
  newContainer: ContainerView | null;
  /** The movements booked; none when no quantity changed. */
  movementIds: string[];
  /** What the person should know; what happened was recorded all the same. */
  warnings: string[];
}
