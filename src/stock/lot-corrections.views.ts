import { PrintedCodeView, ReceivedHoldView } from './receiving.views.js';

export class CorrectedLotView {
  id: string;
  productId: string;
  code: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  codes: PrintedCodeView[];
  /** Codes that were on record and were found wrong; a recall still finds the lot by them. */
  supersededCodes: PrintedCodeView[];
  /** Last day of use, YYYY-MM-DD; null when none is printed. */
  useBy: string | null;
  useByPrecision: 'day' | 'month' | 'year' | 'none printed';
  manufacturedOn: string | null;
  version: number;
  /** What has to be decided because of the correction. */
  holds: ReceivedHoldView[];
}
