import { WriteDto } from '../../platform/request.dto.js';

export class MakeReplayDto extends WriteDto {}
