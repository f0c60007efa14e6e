import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { PageDto } from '../../platform/request.dto.js';
import { type BalanceFigure, balanceFigures } from './balance-account.js';

export class BalanceMovementPageDto extends PageDto {
  /** Only the movements behind one figure; left out: all of the lot. */
  @MayBeLeftOut() @IsIn(balanceFigures) kind?: BalanceFigure;
}
