/** Whether the `details` element of a toggle event is open. */
export function isOpen({ target }: Event): boolean {
  return target instanceof HTMLDetailsElement && target.open;
}
