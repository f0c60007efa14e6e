export class PlaceView {
  id: string;
  name: string;
  kind: 'shelf' | 'treatment room' | 'travelling case' | 'practice shelf' | 'set aside';
  archived: boolean;
}
