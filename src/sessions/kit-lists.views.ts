export class KitItemView {
  productId: string | null;
  /** Maker, name and shade of the product. */
  productName: string | null;
  /** Key of a configuration: any cartridge of it will do. */
  configuration: string | null;
  quantity: number;
}

export class KitListView {
  procedureId: string;
  /** Null: the procedure's list, for all who have none of their own. */
  artistId: string | null;
  items: KitItemView[];
  /** Null: no list was made yet, and none is needed for setup. */
  version: number | null;
}
