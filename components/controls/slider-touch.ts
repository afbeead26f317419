/*
 * A finger that comes down on a slider may be the beginning of a swipe that scrolls the page. The browser moves the slider at once all
 * the same, before it knows; so what it says is held back until the finger moves along the slider or is lifted, and is taken back
 * where the browser takes the finger for scrolling.
 */

interface Touch {
  id: number;
  x: number;
  y: number;
  /** What the slider said before. */
  value: string;
  state: 'held' | 'drag' | 'scroll';
}

/** More sideways than this is no tremor, CSS px. */
const SLOP_PX = 3;

const touches = new WeakMap<EventTarget, Touch>();

/** Whether a drag or a tap may begin with it. */
export function beginTouch({ target, pointerType, pointerId, clientX, clientY, isPrimary }: PointerEvent): boolean {
  if (!target || !isPrimary) return false;
  if (pointerType === 'mouse') touches.delete(target);
  else {
    const { value } = target as HTMLInputElement;
    touches.set(target, { id: pointerId, x: clientX, y: clientY, value, state: 'held' });
  }
  return true;
}

/** Whether what the slider says now is not to be taken. */
export function isHeld(target: EventTarget): boolean {
  const state = touches.get(target)?.state;
  return state === 'held' || state === 'scroll';
}

/** Whether a finger that was held back has just turned out to drag: what the slider says counts from here on. */
export function isDrag({ target, pointerId, clientX, clientY }: PointerEvent): boolean {
  const touch = target && touches.get(target);
  if (!touch || touch.id !== pointerId || touch.state !== 'held') return false;
  const [across, down] = [Math.abs(clientX - touch.x), Math.abs(clientY - touch.y)];
  if (across < SLOP_PX || across < down) return false;
  touch.state = 'drag';
  return true;
}

/** Whether a finger is lifted that was held back: it tapped the slider. */
export function endTouch({ target, pointerId }: PointerEvent): boolean {
  const touch = target && touches.get(target);
  if (!touch || touch.id !== pointerId || touch.state === 'scroll') return false;
  const isTap = touch.state === 'held';
  touch.state = 'drag';
  return isTap;
}

/** The page scrolls: the slider stands where it stood. Tells whether a drag had begun all the same, which is to be taken back. */
export function takeBack({ target, pointerId }: PointerEvent): boolean {
  const touch = target && touches.get(target);
  if (!touch || touch.id !== pointerId) return false;
  const { value, state } = touch;
  touch.state = 'scroll';
  (target as HTMLInputElement).value = value;
  // What the browser says of it afterwards is not the reader's.
  setTimeout(() => {
    if (touches.get(target) !== touch) return;
    (target as HTMLInputElement).value = value;
    touches.delete(target);
  });
  return state === 'drag';
}
