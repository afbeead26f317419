import type { CoreApi, MadeLayer, QuestionRecord, ServedCore } from './protocol.js';

/**
 * A part of the core, cut by what it computes, as one function that needs nothing outside itself but the layers that it names: its
 * source goes into the worker, and is called on the page where no worker can be had.
 */
export interface Layer {
  readonly name: string;
  readonly needs: readonly Layer[];
  readonly make: (made: MadeLayers) => MadeLayer;
}

/** Layers by name; the base makes the core of them all. */
export type MadeLayers = Record<string, MadeLayer> & { base?: BaseLayer };

interface BaseLayer extends MadeLayer {
  createCore(layers: MadeLayers): CoreApi<QuestionRecord>;
  /** The page's end of the wire. It is here because the core holds the wire's library anyway: one copy of its bytes serves both ends. */
  wrap(worker: Worker): unknown;
}

/** Layers joined so far, each behind those it needs. */
export class JoinedLayers {
  readonly #all = new Map<string, Layer>();
  readonly #made: MadeLayers = {};
  #core: CoreApi<QuestionRecord> | undefined;

  /** @returns whether there is one among them that was not there before */
  join(layers: readonly Layer[]): boolean {
    let isNew = false;
    for (const layer of layers) {
      if (this.#all.has(layer.name)) continue;
      this.join(layer.needs);
      this.#all.set(layer.name, layer);
      isNew = true;
    }
    return isNew;
  }

  /** A classic script that is the core, in a worker. Strict, as on the page, where the functions stand in modules. */
  get script(): string {
    const made = [...this.#all.values()].map(({ name, make }) => `made.${name}=(${make})(made);`);
    return `'use strict';const made={};${made.join('\n')}\nmade.base.createCore(made).serve(self)`;
  }

  /** The core in a worker, which runs the script. */
  inWorker(worker: Worker): ServedCore {
    this.#make('base');
    return this.#made.base!.wrap(worker) as ServedCore;
  }

  /** The core of all layers on this thread, made as far as it is not. */
  get core(): CoreApi<QuestionRecord> {
    for (const name of this.#all.keys()) this.#make(name);
    this.#core ??= this.#made.base!.createCore(this.#made);
    return this.#core;
  }

  #make(name: string): void {
    this.#made[name] ??= this.#all.get(name)!.make(this.#made);
  }
}
