import { useEffect, useState } from 'react';

/** The clock, looked at once a minute: enough for 'at 14:05' to become 'on 12 March' at midnight. */
export function useMinute(): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 60_000);
    return () => clearInterval(timer);
  }, []);
  return now;
}
