import type { Role } from './permissions.js';

export class PersonView {
  id: string;
  /** Null in the answer to a write, which is kept, and after erasure. */
  name: string | null;
  role: Role;
  state: 'active' | 'left';
  /** The last local day on which they may do anything; null: no end. */
  until: string | null;
  /** Whether they can sign in: they accepted an invitation. */
  hasAccount: boolean;
  version: number;
}
