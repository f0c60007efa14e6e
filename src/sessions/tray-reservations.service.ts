import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Reservations, type Reserved } from '../stock/reservations.service.js';

/** Tells stock what lies on trays. */
@Injectable()
export class TrayReservations implements OnModuleInit {
  constructor(private readonly reservations: Reservations) {}

  onModuleInit(): void {
    this.reservations.register(async (read, studioId, containerId) => {
      const [reserved] = await read<Reserved>(
        `SELECT count(*) AS lines, coalesce(sum(pieces), 0) AS pieces FROM tray_line
         WHERE studio_id = $1 AND container_id = $2 AND state = 'on tray'`,
        [studioId, containerId],
      );
      return reserved ?? { lines: 0, pieces: 0 };
    });
  }
}
