import { IsBoolean, IsIn, IsOptional, ValidateIf } from 'class-validator';
import { SymbologyIdentifier, SymbolText } from '../catalogue/symbol.dto.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { EventDto } from '../platform/request.dto.js';

const takeOffOutcomes = ['back unopened', 'opened unused'] as const;

/** What an artist shows to the tray: a symbol, or what was picked after a question. */
export class ScanDto extends EventDto {
  /** The text of the symbol as the reader gave it, or a lot code typed from a label. */
  @ValidateIf(
    (scan: ScanDto) => scan.symbol !== undefined || !(scan.containerId ?? scan.lotId ?? scan.productId),
  )
  @SymbolText('one of symbol, containerId, lotId and productId must be given')
  symbol?: string;

  /** ISO/IEC 15424 symbology identifier such as `]d2`, when the reader tells it apart. */
  @SymbologyIdentifier() symbologyIdentifier?: string;

  /** The bottle or box that is meant, after the question which. */
  @MayBeLeftOut() @NamedId() containerId?: string;
  /** The lot picked from a list. */
  @MayBeLeftOut() @NamedId() lotId?: string;
  /** A product wanted without a symbol: its lots are listed, or `none left` is counted. */
  @MayBeLeftOut() @NamedId() productId?: string;

  /** The answer to "another one?": this is one piece more with the same symbol. */
  @IsOptional() @IsBoolean() another?: boolean;
}

export class TakeOffDto extends EventDto {
  /** Left out: back unopened. What was opened is not put back: its piece is wasted, a bottle is open from now on. */
  @MayBeLeftOut() @IsIn(takeOffOutcomes) outcome?: (typeof takeOffOutcomes)[number];
}
