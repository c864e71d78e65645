import { useEffect, useState } from "preact/hooks";

let waiting: ServiceWorker | undefined;
const watchers = new Set<(ready: boolean) => void>();

function offer(worker: ServiceWorker | null): void {
  // The first one of all has nothing to wait for.
  if (!worker || !navigator.serviceWorker.controller) return;
  waiting = worker;
  for (const watcher of watchers) watcher(true);
}

/** Puts the page into the phone, and notices when there is a newer one. */
export async function settle(): Promise<void> {
  if (!("serviceWorker" in navigator) || import.meta.env.DEV) return;
  const place = await navigator.serviceWorker.register("./sw.js", { scope: "./" });
  offer(place.waiting);
  place.addEventListener("updatefound", () => {
    const fresh = place.installing;
    fresh?.addEventListener("statechange", () => fresh.state === "installed" && offer(fresh));
  });
  setInterval(() => navigator.onLine && void place.update().catch(() => undefined), 3_600_000);
}

export function useUpdate(): boolean {
  const [ready, setReady] = useState(waiting !== undefined);
  useEffect(() => {
    watchers.add(setReady);
    return () => void watchers.delete(setReady);
  }, []);
  return ready;
}

/** Only when the person says so, and never during a visit. */
export function takeUpdate(): void {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
  waiting?.postMessage("take over");
}
