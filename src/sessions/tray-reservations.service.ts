import { Injectable, type OnModuleInit } from '@nestjs/common';
import { placeholders } from '../platform/database/database.js';
import { Reservations, type Reserved } from '../stock/reservations.service.js';

/** Tells stock what lies on trays. */
@Injectable()
export class TrayReservations implements OnModuleInit {
  constructor(private readonly reservations: Reservations) {}

  onModuleInit(): void {
    this.reservations.register((read, studioId, containerIds) =>
      read<{ containerId: string } & Reserved>(
        `SELECT container_id AS "containerId", count(*) AS lines, sum(pieces) AS pieces FROM tray_line
         WHERE studio_id = $1 AND container_id IN (${placeholders(containerIds)}) AND state = 'on tray'
         GROUP BY container_id`,
        [studioId, ...containerIds],
      ),
    );
  }
}
