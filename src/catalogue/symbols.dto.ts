import { SymbolDto } from './symbol.dto.js';

/** Reading changes nothing, so it needs no id. */
export class ReadSymbolDto extends SymbolDto {}
