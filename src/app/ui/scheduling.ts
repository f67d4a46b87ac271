/** Runs `act` after the next paint. */
export function afterPaint(act: () => void): void {
  requestAnimationFrame(() => setTimeout(act));
}

/** Runs `act` when the browser is idle, at the latest after two seconds. */
export function whenIdle(act: () => void): void {
  if ("requestIdleCallback" in window) requestIdleCallback(act, { timeout: 2000 });
  else setTimeout(act, 200);
}
