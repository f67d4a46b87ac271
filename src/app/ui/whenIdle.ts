/** Does what nobody waits for once nothing else is to be done, or in a while. */
export function whenIdle(act: () => void): void {
  if ("requestIdleCallback" in window) requestIdleCallback(act, { timeout: 2000 });
  else setTimeout(act, 200);
}
