/** A pointer moved sideways this far, in pixels, drags; one moved less far taps. */
const LEAST_DRAG = 4;

interface Drag {
  readonly pointer: number;
  readonly startedAt: number;
  /** Distance from the pointer to the middle of what it drags, in pixels. */
  readonly offset: number;
  readonly isMoving: boolean;
}

/**
 * Drags something along a stage sideways with a pointer. Pressed on the thing, the pointer drags it; pressed beside it,
 * the thing jumps to the pointer. Moving up and down still scrolls the page, if the stage's `touch-action` allows it.
 */
export class SidewaysDrag {
  #drag: Drag | null = null;

  /** @param move gets the wanted place of the thing's middle, in pixels across the stage */
  constructor(private readonly move: (across: number) => void) {}

  /** @param middle of the thing, in pixels across the stage; null if the pointer is beside it */
  readonly down = (event: PointerEvent, middle: number | null): void => {
    if (event.button !== 0) return;
    const at = across(event);
    this.#drag = {
      pointer: event.pointerId,
      startedAt: at,
      offset: middle === null ? 0 : middle - at,
      isMoving: false,
    };
  };

  readonly moved = (event: PointerEvent): void => {
    const drag = this.#drag;
    if (drag === null || event.pointerId !== drag.pointer) return;
    const at = across(event);
    if (!drag.isMoving) {
      if (Math.abs(at - drag.startedAt) < LEAST_DRAG) return;
      this.#drag = { ...drag, isMoving: true };
      stageOf(event).setPointerCapture(event.pointerId);
    }
    this.move(at + drag.offset);
  };

  readonly up = (event: PointerEvent): void => {
    const drag = this.#drag;
    this.#drag = null;
    // A tap beside the thing moves it there; a tap on it moves nothing.
    if (drag !== null && !drag.isMoving && drag.offset === 0) this.move(across(event));
  };

  readonly cancel = (): void => {
    this.#drag = null;
  };
}

function stageOf({ currentTarget }: Event): Element {
  if (!(currentTarget instanceof Element)) throw new Error("A pointer event is handled on its stage.");
  return currentTarget;
}

function across(event: PointerEvent): number {
  return event.clientX - stageOf(event).getBoundingClientRect().left;
}
