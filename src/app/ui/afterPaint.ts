/** Does something in a task of its own, once what is there now has been painted. */
export function afterPaint(act: () => void): void {
  requestAnimationFrame(() => setTimeout(act));
}
