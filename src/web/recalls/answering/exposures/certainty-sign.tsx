import type { Certainty } from '../../../../recalls/exposures/exposure-certainty.js';
import { Sign } from '../../../stock/sign.js';
import { useTexts } from '../../../texts/texts.js';

/** How sure it is that a lot of the recall touched a client. */
export function CertaintySign({ certainty }: { certainty: Certainty }) {
  const words = useTexts().recallExposures;
  return <Sign standing={certainty === 'certain' ? 'fault' : 'care'}>{words.certainties[certainty]}</Sign>;
}
