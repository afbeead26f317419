import type { PropertyValues } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { type PageTable, pageProblems, type ReadingsAttributes, readOver } from '../bumpline-readings/page-readings.js';
import { LinkedApp, type LinkedHost } from './linked-app.js';

/** What a page may say of links, and of readings on them. */
export interface ReadHost extends LinkedHost {
  over: string | number | undefined;
  readings: ReadingsAttributes['readings'];
}

/** The app of an element about one corner's links of which a page may give readings as well, told over some wheel travel. */
export abstract class ReadApp<
  Host extends ReadHost,
  Answer extends { drop: number },
  Request extends object,
> extends LinkedApp<Host, Answer, Request> {
  /** A table of readings inside, as it was understood. */
  protected table: PageTable = {};

  /** Of which angle a page's readings are. */
  protected abstract readonly readQuantity: ReadingQuantity;
  /** The travel that is asked about, mm: by somebody, and unless anybody says otherwise. */
  protected abstract readonly ownOver: number | undefined;
  protected abstract readonly usualOver: number;

  get over(): number {
    const read = readOver(this.host);
    return this.ownOver ?? (read?.ok ? read.value : this.usualOver);
  }

  get unreadOver(): string | undefined {
    const found = this.pageProblems.find(({ path }) => path === 'over');
    return found && String(found.value);
  }

  /** What the page says, as the element of readings reads it. */
  protected get pageReadings(): ReadingsAttributes {
    const { over, readings } = this.host;
    return { over, readings, quantity: this.readQuantity, degree: undefined };
  }

  protected get readingProblems(): Problem[] {
    return pageProblems(this.pageReadings, this.table);
  }

  protected override loadLight(): void {
    super.loadLight();
    this.loadSetups();
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('readings')) this.loadSetups();
    if (changed.has('over')) this.ask();
  }

  protected get pageProblems(): Problem[] {
    const over = this.ownOver === undefined ? readOver(this.host) : undefined;
    return [...this.cars.pageProblems('source', 'heights', 'setups'), ...(over && !over.ok ? [over.problem] : [])];
  }
}
