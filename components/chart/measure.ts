let pen: CanvasRenderingContext2D | null | undefined;

/** How wide texts are in a family of fonts, CSS px. */
export const measureIn =
  (family: string) =>
  (text: string, weight: number, size = 13): number => {
    // Without a canvas (a privacy setting may take it away) a generous guess keeps labels apart.
    pen ??= document.createElement('canvas').getContext('2d');
    if (!pen) return Math.ceil(text.length * 0.6 * size);
    pen.font = `${weight} ${size}px ${family}`;
    return Math.ceil(pen.measureText(text).width);
  };
