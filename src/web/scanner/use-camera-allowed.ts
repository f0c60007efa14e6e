import { useEffect, useState } from 'react';

/** Whether the browser lets this page use the camera without asking; undefined until it is known. */
export function useCameraAllowed(): boolean | undefined {
  const [allowed, setAllowed] = useState<boolean>();
  useEffect(() => {
    let over = false;
    // Some browsers do not tell: then it has to be asked for by a press.
    isAllowed().then(
      (answer) => over || setAllowed(answer),
      () => over || setAllowed(false),
    );
    return () => {
      over = true;
    };
  }, []);
  return allowed;
}

async function isAllowed(): Promise<boolean> {
  return (await navigator.permissions.query({ name: 'camera' })).state === 'granted';
}
