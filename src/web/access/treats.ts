import type { PersonView } from '../../identity/people.views.js';
import { roleMay } from '../../identity/permissions.js';

/** Whether somebody works here and treats clients. */
export function treats({ state, role }: Pick<PersonView, 'state' | 'role'>): boolean {
  return state === 'active' && roleMay(role, 'work the tray');
}
