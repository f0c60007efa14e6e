import type { PlaceView } from '../../stock/places.views.js';
import type { LineDraft } from './line-draft.js';

/** Where a line is put away; undefined as long as nothing is chosen. */
export function placeOfLine(
  line: LineDraft,
  { places, usualPlaceId }: { places: readonly PlaceView[]; usualPlaceId: string },
): PlaceView | undefined {
  return places.find(({ id }) => id === (line.placeId || usualPlaceId));
}
