/** How many pieces of what a row of purchase_order_line asks for have come with it, as an expression in SQL. */
export const receivedPieces = `coalesce((SELECT sum(delivery_line.quantity_pieces) FROM delivery_line
    JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
  WHERE delivery_line.studio_id = purchase_order_line.studio_id
    AND delivery_line.order_line_id = purchase_order_line.id
    AND lot.product_id = purchase_order_line.product_id), 0)`;

/** How many pieces a row of purchase_order_line asks for. */
export const orderedPieces =
  'purchase_order_line.packs * purchase_order_line.pack_containers * purchase_order_line.container_pieces';
