import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { useDestinations } from '../../told/use-destinations.js';
import { listTold } from './channels.requests.js';
import { OrderSection } from './order-section.js';
import { PeopleSection } from './people-section.js';
import { StoppedSection } from './stopped-section.js';
import { WebhooksSection } from './webhooks-section.js';

/** To whom and where the alerts of a studio are sent. */
export function ChannelsPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.channels;
  const told = useAnswer(['told', studioId], () => listTold(studioId));
  const destinations = useDestinations(studioId, 'all');
  const reload = async () => {
    await Promise.all([destinations.reload(), told.reload()]);
  };
  const seen = { ...destinations, reload };
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <PageLink to={`/account/told/${studioId}`} alone>
        {texts.told.title}
      </PageLink>
      <StoppedSection studioId={studioId} destinations={seen} />
      <OrderSection studioId={studioId} told={told.answer} />
      <PeopleSection
        studioId={studioId}
        told={told.answer}
        problem={told.problem}
        destinations={seen}
        onChanged={reload}
      />
      <WebhooksSection studioId={studioId} destinations={seen} />
    </Page>
  );
}
