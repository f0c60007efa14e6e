import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { type ReactNode, useEffect, useState } from 'react';
import { currentConnection, onConnection } from './connection.js';

/** Keeps what the service answered, as long as it is shown: whoever signs in next at this browser finds nothing of it. */
export function Answers({ children }: { children: ReactNode }) {
  const [client] = useState(
    () =>
      new QueryClient({
        defaultOptions: {
          queries: {
            retry: false,
            // The service may well be reached where there is no internet.
            networkMode: 'always',
          },
        },
      }),
  );
  // What could not be asked, or was asked before the connection was lost, is asked anew once it is back.
  useEffect(
    () =>
      onConnection(() => {
        if (currentConnection().isReached) void client.invalidateQueries();
      }),
    [client],
  );
  return <QueryClientProvider client={client}>{children}</QueryClientProvider>;
}
