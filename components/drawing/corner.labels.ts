/** English words on the views of a corner's links. */
export const CORNER = {
  ways: {
    front: 'from the front: outboard →',
    side: '← forward, seen from outside the car',
    top: 'from above: forward ↑, outboard →',
  },
} as const;
