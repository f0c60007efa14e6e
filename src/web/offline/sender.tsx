import { useEffect } from 'react';
import { useConnection } from '../service/connection.js';
import { useRequester } from '../sign-in/requester.js';
import { outgoing } from './outgoing.js';

/** Sends what waits on this device in the name of whoever is signed in, now and whenever the service is reached again. */
export function Sender() {
  const { studios } = useRequester();
  const { isReached } = useConnection();
  useEffect(() => {
    if (isReached) void outgoing.sendFor(studios.map(({ personId }) => personId));
  }, [isReached, studios]);
  useEffect(
    () => () => {
      void outgoing.sendFor([]);
    },
    [],
  );
  return null;
}
