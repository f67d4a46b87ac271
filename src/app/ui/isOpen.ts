/** Whether the fold that was just opened or closed is open now. */
export function isOpen({ target }: Event): boolean {
  return target instanceof HTMLDetailsElement && target.open;
}
