import { Button } from '@mantine/core';
import { Component, type ReactNode } from 'react';
import { useTexts } from '../texts/texts.js';
import { Page } from './page.js';

/**
 * Stands in for a page that could not be shown. Mostly it is a part that is loaded when it is first opened and is not
 * there any more, since the service was upgraded while the page was open: loading the page anew mends that.
 */
export class PageFault extends Component<{ children: ReactNode }, { failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override render() {
    return this.state.failed ? <Failed /> : this.props.children;
  }
}

function Failed() {
  const texts = useTexts();
  return (
    <Page title={texts.app.pageFailed} lead={texts.app.pageFailedDetail}>
      <Button onClick={() => window.location.reload()}>{texts.app.loadAnew}</Button>
    </Page>
  );
}
