import { ArrayMaxSize, ArrayMinSize, IsArray, IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { type LabelSheetName, labelSheetNames, labelSheets, labelsPerPage } from './label-sheets.js';

const maximumLabels = 500;

/** Printing changes nothing, so it needs no id. */
export class PrintLabelsDto {
  /** In the order in which they are printed; an id named twice is printed twice. */
  @IsArray() @ArrayMinSize(1) @ArrayMaxSize(maximumLabels) @NamedId({ each: true }) containerIds: string[];
  @IsIn(labelSheetNames) sheet: LabelSheetName;
  /** Position of the first label on an A4 sheet that was used in part, 1 to 65, row by row. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(labelsPerPage(labelSheets['A4 sheet'])) startAt?: number;
}
