import { IsIn } from 'class-validator';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { type PlaceKind, placeKinds } from './vocabulary.js';

export class AddPlaceDto extends WriteDto {
  @PlainText(60) name: string;
  @IsIn(placeKinds) kind: PlaceKind;
}

export class ArchivePlaceDto extends WriteDto {}
