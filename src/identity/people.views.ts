export class PersonView {
  id: string;
  /** Null in the answer to a write, which is kept, and after erasure. */
  name: string | null;
  role: 'owner' | 'manager' | 'artist';
  state: 'active' | 'left';
  version: number;
}
