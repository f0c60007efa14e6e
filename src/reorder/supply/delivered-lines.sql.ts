/** The lines of deliveries with their lots, and the lines of orders that they answer where they do, as a FROM in SQL. */
export const deliveredLines = `delivery
     JOIN delivery_line ON delivery_line.studio_id = delivery.studio_id AND delivery_line.delivery_id = delivery.id
     JOIN lot ON lot.studio_id = delivery_line.studio_id AND lot.id = delivery_line.lot_id
     LEFT JOIN purchase_order_line ON purchase_order_line.studio_id = delivery_line.studio_id
       AND purchase_order_line.id = delivery_line.order_line_id
     LEFT JOIN purchase_order ON purchase_order.studio_id = purchase_order_line.studio_id
       AND purchase_order.id = purchase_order_line.order_id`;
