import type { Permission } from '../../identity/permissions.js';
import { pathOf } from '../frame/places.js';

/** What there is already of what a first tray needs. */
export interface FoundAtStart {
  hasPlace: boolean;
  hasProduct: boolean;
  hasLot: boolean;
  hasProcedure: boolean;
  hasSession: boolean;
  hasCompleted: boolean;
}

export type FirstStepName = 'place' | 'product' | 'receive' | 'procedure' | 'session' | 'finish';

export interface FirstStep {
  name: FirstStepName;
  isDone: boolean;
  /** Where it is done; undefined on this very page, and for whoever may not. */
  path: string | undefined;
}

/** The steps in their order, each with where it is done. */
export function firstSteps(found: FoundAtStart, studioId: string, may: readonly Permission[]): FirstStep[] {
  const settings = { studioId, area: 'settings' } as const;
  const stock = { studioId, area: 'stock' } as const;
  const step = (name: FirstStepName, isDone: boolean, path?: string, needs?: Permission): FirstStep => ({
    name,
    isDone,
    path: needs === undefined || may.includes(needs) ? path : undefined,
  });
  return [
    step('place', found.hasPlace, pathOf(settings, 'places'), 'change the register'),
    step('product', found.hasProduct, pathOf(settings, 'products'), 'change the register'),
    step('receive', found.hasLot, pathOf(stock, 'receive'), 'receive stock'),
    step('procedure', found.hasProcedure, pathOf(settings, 'procedures'), 'change procedures'),
    step('session', found.hasSession),
    step('finish', found.hasCompleted),
  ];
}
