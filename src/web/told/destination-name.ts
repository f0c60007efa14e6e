import type { AlertDestinationView } from '../../alerts/destinations/alert-destinations.views.js';
import type { Texts } from '../texts/en/english.js';

/** What people call it; mail by its address. */
export function nameOfDestination({ name, address }: AlertDestinationView, texts: Texts): string {
  return name ?? address ?? texts.destination.erased;
}
