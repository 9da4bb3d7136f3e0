import { useCallback, useEffect, useRef, useState, useSyncExternalStore } from 'react';
import type { Part } from './part.ts';

/** Whether it is there; when it is shown it is asked for. `lost`: it could not be had; `fetch` tries again. */
export function usePart<Module>(of: Part<Module>, onLost?: () => void) {
  const module = useSyncExternalStore(of.whenThere, of.now);
  const [lost, setLost] = useState(false);
  const tell = useRef(onLost);
  useEffect(() => {
    tell.current = onLost;
  });
  const fetch = useCallback(async () => {
    setLost(false);
    const isThere = (await (tell.current ? of.ask() : of.load())) !== undefined;
    if (isThere) return;
    setLost(true);
    tell.current?.();
  }, [of]);
  useEffect(() => {
    if (of.now() === undefined) void fetch();
  }, [of, fetch]);
  return { module, lost, fetch };
}
