import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { DrillView } from '../../../recalls/drills/drills.views.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { Score } from './score.js';

/** A drill in the list of them, with how well it went. */
export function DrillEntry({ standing: { studioId }, drill }: { standing: StandingView; drill: DrillView }) {
  const texts = useTexts();
  const words = texts.drills;
  const when = useStudioInstants(studioId);
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'recalls' }, drill.recallId)}>
          {drill.title}
        </PageLink>
      }
      mark={texts.recalls.states[drill.state]}
    >
      <p>
        {[
          drill.endedAt === null
            ? texts.recalls.since(when(drill.openedAt))
            : texts.recalls.from(when(drill.openedAt), when(drill.endedAt)),
          drill.drawn ? words.drawn : words.chosen,
          ...(drill.chainWide ? [texts.recalls.ofChain] : []),
        ].join(', ')}
      </p>
      {drill.score && <Score score={drill.score} />}
    </Entry>
  );
}
