import { styleNonce } from './look/style-nonce.js';
import './look/components.css';
import './look/look.css';
import { localStorageColorSchemeManager, MantineProvider } from '@mantine/core';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { BrowserRouter } from 'react-router';
import { App } from './app.js';
import { loadAhead } from './frame/studio-pages.js';
import { cssVariables, theme } from './look/theme.js';
import { keepAppOnDevice } from './offline/register.js';
import { watchOneTimeSecret } from './sign-in/one-time-secret.js';

watchOneTimeSecret();
keepAppOnDevice();
loadAhead(window.location.pathname);

const brightness = localStorageColorSchemeManager({ key: 'lotward-brightness' });

const root = document.getElementById('root');
if (!root) throw new Error('The page has no place for the app.');
createRoot(root).render(
  <StrictMode>
    <MantineProvider
      theme={theme}
      cssVariablesResolver={cssVariables}
      defaultColorScheme="auto"
      colorSchemeManager={brightness}
      getStyleNonce={() => styleNonce}
    >
      <BrowserRouter>
        <App />
      </BrowserRouter>
    </MantineProvider>
  </StrictMode>,
);
