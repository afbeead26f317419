/** em; by tag and `show`, the whole: ''. */
export interface Reserved {
  widths: number[];
  heights: Record<string, Record<string, number[]>>;
  /** Besides English, by BCP 47 primary subtag. */
  languages: Record<string, Record<string, Record<string, number[]>>>;
}
export function reservedHeights(): Reserved;
/** The height kept for an element in a column of some width, px. @throws {Error} where none was measured */
export function reservedHeight(tag: string, width: number, show?: string): number;
/** A style sheet that keeps the room of elements before they come. */
export function reservingStyles(of?: { tags?: string[]; shows?: boolean; more?: number }): string;
