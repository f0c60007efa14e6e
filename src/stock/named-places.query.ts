import type { Read } from '../platform/database/database.js';
import type { PlaceKind } from './vocabulary.js';

export interface NamedPlace {
  name: string;
  kind: PlaceKind;
}

/** All places of a studio, archived ones too, by id. */
export async function namedPlaces(read: Read, studioId: string): Promise<Map<string, NamedPlace>> {
  const rows = await read<NamedPlace & { id: string }>(
    'SELECT id, name, kind FROM place WHERE studio_id = $1',
    [studioId],
  );
  return new Map(rows.map(({ id, ...place }) => [id, place]));
}
