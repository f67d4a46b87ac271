/** A pointer that has gone so far sideways, in pixels, drags; one that has not, taps. */
const DRAG_FROM = 4;

interface Held {
  readonly pointer: number;
  readonly startedAt: number;
  /** From the pointer to the middle of what it holds. */
  readonly offset: number;
  readonly isDragged: boolean;
}

/**
 * Moves something along a stage sideways with a pointer: taken hold of, it follows; held beside it, it comes to the
 * pointer. Up and down still scrolls the page, as far as the stage's `touch-action` says so.
 */
export class Dragging {
  #held: Held | null = null;

  /** @param move is told how far across the stage the pointer wishes the thing's middle to be, in pixels */
  constructor(private readonly move: (across: number) => void) {}

  /** @param middle where on the stage the thing's middle is, in pixels; null where the pointer is beside it */
  readonly down = (event: PointerEvent, middle: number | null): void => {
    if (event.button !== 0) return;
    const at = across(event);
    this.#held = {
      pointer: event.pointerId,
      startedAt: at,
      offset: middle === null ? 0 : middle - at,
      isDragged: false,
    };
  };

  readonly moved = (event: PointerEvent): void => {
    const held = this.#held;
    if (held === null || event.pointerId !== held.pointer) return;
    const at = across(event);
    if (!held.isDragged) {
      if (Math.abs(at - held.startedAt) < DRAG_FROM) return;
      this.#held = { ...held, isDragged: true };
      stageOf(event).setPointerCapture(event.pointerId);
    }
    this.move(at + held.offset);
  };

  readonly up = (event: PointerEvent): void => {
    const held = this.#held;
    this.#held = null;
    // A tap beside it brings it there; one on it leaves it where it is.
    if (held !== null && !held.isDragged && held.offset === 0) this.move(across(event));
  };

  readonly cancel = (): void => {
    this.#held = null;
  };
}

function stageOf({ currentTarget }: Event): Element {
  if (!(currentTarget instanceof Element)) throw new Error("A pointer's events are heard on a stage.");
  return currentTarget;
}

function across(event: PointerEvent): number {
  return event.clientX - stageOf(event).getBoundingClientRect().left;
}
