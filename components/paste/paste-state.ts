import type { ReadingQuantity } from '../../core/readings/reading.js';
import type {
  ColumnRole,
  SheetColumn,
  Understanding,
  UnderstandOptions,
} from '../../core/readings/table/understanding.js';
import type { ReadingsHost } from './readings-host.js';

export type SheetReader = Pick<
  typeof import('./sheet-reader.js'),
  'understand' | 'splitText' | 'parseQuantity' | 'quantityIn'
>;

export type ColumnSays = Partial<Pick<SheetColumn, 'role' | 'unit' | 'set' | 'pass' | 'going'>>;

const lengths: readonly (ColumnRole | undefined)[] = ['travel', 'height', 'body', 'dialFront', 'dialRear'];

interface Draft {
  text: string;
  isAnswer: boolean;
  /** The field was left, or Enter was pressed. */
  isDone: boolean;
}

/** What was said of a text. */
interface Said {
  answers: Record<string, string>;
  columns: Record<number, ColumnSays>;
  quantity: ReadingQuantity | undefined;
  drafts: ReadonlyMap<string, Draft>;
}

/** A pasted text with all that was said about it, and how it is understood now. It outlives the closing of its dialog. */
export class PasteState {
  text = '';
  /** What stood there before it was replaced as a whole. */
  before: string | undefined;
  status: 'empty' | 'waiting' | 'ready' | 'unfetched' | 'fault' = 'empty';
  fault = '';
  understanding: Understanding | undefined;
  isTurned = false;
  /** Texts of number fields that are being typed, or are no answer, by question. */
  readonly drafts = new Map<string, Draft>();
  /** Cells that the user corrected, by `row,column`; a correction counts for the text it was made for only. */
  readonly mended = new Map<string, { was: string; now: string }>();
  reader: SheetReader | undefined;
  #answers: Record<string, string> = {};
  #columns: Record<number, ColumnSays> = {};
  /** Of which angle the user says that it is. */
  #quantity: ReadingQuantity | undefined;
  #app: ReadingsHost;
  #load: () => Promise<SheetReader>;
  #number = 0;
  /** What was said of the text before, for when it comes back. */
  #past: { text: string; said: Said } | undefined;

  constructor(app: ReadingsHost, load: () => Promise<SheetReader>) {
    this.#app = app;
    this.#load = load;
  }

  /**
   * Whether a text was replaced as a whole decides whether what was said of the old one is still meant. Of no text nothing is; a text
   * that comes back has what was said of it again.
   */
  setText(text: string, isWhole = false): void {
    const old = this.understanding;
    const { text: was } = this;
    const past = this.#past;
    if (was.trim() && was !== text && (isWhole || (!text.trim() && was.trim().includes('\n')))) {
      this.before = was;
      this.#past = { text: was, said: this.#said() };
    }
    this.text = text;
    if (text.trim() && past?.text === text && was !== text) {
      this.#restore(past.said);
      void this.read();
      return;
    }
    if (!text.trim()) this.#forget();
    void this.read().then(() => {
      if (isWhole && old && this.understanding && this.text === text && !isAlike(old, this.understanding)) {
        this.#forget();
        void this.read();
      }
    });
  }

  /** After the readings were taken: the text can still be had back. */
  clear(): void {
    this.setText('', true);
  }

  answer(id: string, value: string): void {
    this.#answers = { ...this.#answers, [id]: value };
    this.drafts.delete(id);
    void this.read();
  }

  /**
   * A number field as it is typed.
   *
   * @param value the answer that it makes; without one the question is open again, and nothing is taken while the text stands
   * @param isDone the field was left, or Enter was pressed
   */
  type(id: string, text: string, value: string | undefined, isDone: boolean): void {
    const { [id]: _, ...others } = this.#answers;
    this.#answers = value === undefined ? others : { ...others, [id]: value };
    if (!text.trim() || (isDone && value !== undefined)) this.drafts.delete(id);
    else this.drafts.set(id, { text, isAnswer: value !== undefined, isDone });
    void this.read();
  }

  /** Whether a text stands in a number field that is no answer. */
  get hasWrong(): boolean {
    const asked = this.understanding?.questions ?? [];
    return asked.some(({ id }) => this.drafts.get(id)?.isAnswer === false);
  }

  get takesEither(): boolean {
    return this.#app.takesEither ?? false;
  }

  /** What was said of columns and units is of the other angle, and forgotten. */
  sayQuantity(quantity: ReadingQuantity): void {
    this.#forget();
    this.#quantity = quantity;
    void this.read();
  }

  /** What the user said of a column, if anything. */
  said(column: number): ColumnSays | undefined {
    return this.#columns[column];
  }

  say(column: number, says: ColumnSays): void {
    const columns = { ...this.#columns };
    const own: ColumnSays = { ...columns[column], ...says };
    const { role } = says;
    if (role) {
      const now = this.understanding?.columns[column]?.role;
      if (lengths.includes(role) !== lengths.includes(now)) delete own.unit;
    }
    columns[column] = own;
    this.#columns = columns;
    void this.read();
  }

  /** Names the set of parts that columns hold; without a name the sheet says it again. */
  nameSet(columns: readonly number[], set: string): void {
    const said = { ...this.#columns };
    for (const column of columns) {
      const { set: _, ...rest } = said[column] ?? {};
      said[column] = set ? { ...rest, set } : rest;
      if (Object.keys(said[column]).length === 0) delete said[column];
    }
    this.#columns = said;
    void this.read();
  }

  unsay(column: number): void {
    const { [column]: _, ...columns } = this.#columns;
    this.#columns = columns;
    void this.read();
  }

  mend(row: number, column: number, was: string, now: string): void {
    if (now === was) this.mended.delete(`${row},${column}`);
    else this.mended.set(`${row},${column}`, { was, now });
    void this.read();
  }

  /** Reads the text again, by what is said now; fetches the reader first where it is not there. Never rejects. */
  async read(): Promise<void> {
    const number = ++this.#number;
    const { host } = this.#app;
    host.requestUpdate();
    if (!this.text.trim()) {
      this.status = 'empty';
      this.understanding = undefined;
      return;
    }
    if (!this.reader) {
      this.status = 'waiting';
      try {
        this.reader = await this.#load();
      } catch (error) {
        console.warn('Bumpline: the reader of sheets could not be fetched.', error);
        if (number === this.#number) this.status = 'unfetched';
        host.requestUpdate();
        return;
      }
      if (number !== this.#number) return;
    }
    try {
      const rows = this.#rows(this.reader);
      this.understanding = this.reader.understand(rows, this.#optionsOf(rows, this.reader));
      this.isTurned = isTurned(this.understanding, this.text);
      this.status = 'ready';
    } catch (error) {
      this.understanding = undefined;
      this.status = 'fault';
      this.fault = String(error);
    }
    host.requestUpdate();
  }

  #optionsOf(rows: readonly (readonly string[])[], { quantityIn }: SheetReader): UnderstandOptions {
    const { setup, display, takesEither } = this.#app;
    const said = takesEither ? (this.#quantity ?? quantityIn(rows)) : undefined;
    return { quantity: said ?? setup.quantity, units: display.units, answers: this.#answers, columns: this.#columns };
  }

  #rows({ splitText }: SheetReader): string[][] {
    const rows = splitText(this.text);
    for (const [at, { was, now }] of this.mended) {
      const [row, column] = at.split(',').map(Number) as [number, number];
      if (rows[row]?.[column] === was) rows[row][column] = now;
      else this.mended.delete(at);
    }
    return rows;
  }

  #said(): Said {
    return {
      answers: this.#answers,
      columns: this.#columns,
      quantity: this.#quantity,
      drafts: new Map(this.drafts),
    };
  }

  #restore({ answers, columns, quantity, drafts }: Said): void {
    this.#answers = answers;
    this.#columns = columns;
    this.#quantity = quantity;
    this.drafts.clear();
    for (const [id, draft] of drafts) this.drafts.set(id, draft);
  }

  #forget(): void {
    this.#answers = {};
    this.#columns = {};
    this.#quantity = undefined;
    this.drafts.clear();
  }
}

/** The same columns under the same headings: the same sheet with other figures. */
const isAlike = (one: Understanding, other: Understanding): boolean =>
  one.columns.map(({ heading }) => heading).join('\n') === other.columns.map(({ heading }) => heading).join('\n');

/** Whether lines of the text became columns: one line then holds the whole column of heights. */
function isTurned({ columns, cells }: Understanding, text: string): boolean {
  const column = columns.findIndex(({ role }) => role === 'travel' || role === 'height');
  const heights = cells.flatMap((row) => row[column]?.text || []);
  return heights.length > 3 && text.split('\n').some((line) => heights.every((height) => line.includes(height)));
}
