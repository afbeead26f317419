import type { LitElement, ReactiveController } from 'lit';
import { nextTask } from './next-task.js';

/** An element that could say what stands once on a page. What it is called by is known to every copy of this program, older ones too. */
interface Candidate {
  readonly host: Element;
  /** Whether it says anything now. */
  isSaying: boolean;
  /** Whether it is laid out: a page may hide it by its own style. */
  isLaidOut: boolean;
  readonly changed: () => void;
}

interface Row {
  readonly candidates: Set<Candidate>;
  first: Candidate | undefined;
  /** Hears what is hidden and folded; made by the copy that comes first. */
  readonly watch: MutationObserver;
}

const KEY = Symbol.for('bumpline.once-a-page/1');
const page = globalThis as unknown as Record<symbol, Row | undefined>;
// Of any version: a reader of two sees one page.
const row = (): Row => {
  page[KEY] ??= { candidates: new Set(), first: undefined, watch: new MutationObserver(choose) };
  return page[KEY];
};

/** The node around, out of a shadow tree too. */
const around = (node: Node): Node | null => node.parentNode ?? (node as Partial<ShadowRoot>).host ?? null;

function above(node: Node): Node[] {
  const path: Node[] = [];
  for (let at: Node | null = node; at; at = around(at)) path.unshift(at);
  return path;
}

/** In the order of the document; a shadow tree comes before what its host holds. */
function isBefore(one: Node, other: Node): boolean {
  const [path, others] = [above(one), above(other)];
  const at = path.findIndex((node, i) => node !== others[i]);
  const [here, there] = [path[at], others[at]];
  if (!here || !there) return !here;
  if (here instanceof ShadowRoot || there instanceof ShadowRoot) return here instanceof ShadowRoot;
  return (here.compareDocumentPosition(there) & Node.DOCUMENT_POSITION_FOLLOWING) > 0;
}

/** Whether nothing around it is `hidden`, or folded. Asks attributes alone, so that no layout is forced. */
function isOpen(host: Element): boolean {
  let inside: Node | undefined;
  for (let at: Node | null = host; at; at = (at as Partial<Element>).assignedSlot ?? around(at)) {
    if (at instanceof HTMLElement && at.hasAttribute('hidden')) return false;
    if (at instanceof HTMLDetailsElement && !at.open && inside !== at.querySelector(':scope > summary')) return false;
    inside = at;
  }
  return true;
}

function choose(): void {
  const all = row();
  const before = all.first;
  all.first = undefined;
  for (const one of all.candidates) {
    if (!one.isSaying || !one.isLaidOut || !isOpen(one.host)) continue;
    if (!all.first || isBefore(one.host, all.first.host)) all.first = one;
  }
  if (all.first === before) return;
  before?.changed();
  all.first?.changed();
}

/**
 * What stands once on a page, whichever of its elements says it: the first in the document that is neither hidden nor folded away.
 * Another takes it over when that goes.
 */
export class OnceAPage implements ReactiveController {
  readonly #me: Candidate;
  readonly #size: ResizeObserver;
  #probe: Element | undefined;

  constructor(host: LitElement) {
    this.#me = { host, isSaying: false, isLaidOut: true, changed: () => host.requestUpdate() };
    this.#size = new ResizeObserver(async (entries) => {
      // Not in here: a size that changes now is what raises "ResizeObserver loop" on the page.
      await nextTask();
      const isLaidOut = entries.at(-1)!.contentRect.width > 0;
      if (isLaidOut === this.#me.isLaidOut) return;
      this.#me.isLaidOut = isLaidOut;
      choose();
    });
    host.addController(this);
  }

  /** Asks the one thing inside that is of one size wherever it is laid out. */
  hostUpdated(): void {
    const probe = this.#me.host.shadowRoot?.querySelector('.inside > [role=status]') ?? undefined;
    if (probe === this.#probe) return;
    this.#size.disconnect();
    this.#probe = probe;
    this.#me.isLaidOut = true;
    if (probe) this.#size.observe(probe);
  }

  hostConnected(): void {
    const { candidates, watch } = row();
    const { host } = this.#me;
    candidates.add(this.#me);
    if (this.#probe) this.#size.observe(this.#probe);
    // One observer takes a root once, however often it is told.
    for (const node of above(host))
      if (node instanceof Document || node instanceof ShadowRoot)
        watch.observe(node, { subtree: true, attributeFilter: ['hidden', 'open'] });
    choose();
  }

  hostDisconnected(): void {
    row().candidates.delete(this.#me);
    this.#size.disconnect();
    this.#me.isLaidOut = true;
    choose();
  }

  /** @returns whether it is this element that says it, which says anything or not */
  isFirst(isSaying: boolean): boolean {
    if (isSaying !== this.#me.isSaying) {
      this.#me.isSaying = isSaying;
      choose();
    }
    return row().first === this.#me;
  }
}
