import { Injectable } from '@nestjs/common';

type Follower = (studioId: string) => void;

/**
 * Who wants to know that the stock of a studio changed. Rooms to the right register here at start-up (onModuleInit), so
 * that stock need not know them. They are told inside the transaction of the change, under the studio's lock, and do
 * no more than take it up: whoever scans or receives does not wait for what follows elsewhere.
 */
@Injectable()
export class StockFollowers {
  private readonly followers: Follower[] = [];

  register(follower: Follower): void {
    this.followers.push(follower);
  }

  tell(studioId: string): void {
    for (const follower of this.followers) follower(studioId);
  }
}
