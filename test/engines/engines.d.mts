/** A page in any engine: what the drivers have in common. */
export interface EnginePage {
  goto(url: string): Promise<unknown>;
  reload(): Promise<unknown>;
  evaluate<R>(work: () => R | Promise<R>): Promise<R>;
  evaluate<R, A>(work: (argument: A) => R | Promise<R>, argument: A): Promise<R>;
  setViewport(size: { width: number; height: number }): Promise<unknown>;
  /** Closes it, and what it kept. */
  done(): Promise<unknown>;
}
export interface Engine {
  readonly version: string;
  page(size: { width: number; height: number }): Promise<EnginePage>;
  close(): Promise<void>;
}
export type EngineName = 'chromium' | 'firefox' | 'webkit';
export const isInstalled: (name: EngineName) => boolean;
export const startEngine: (name: EngineName) => Promise<Engine>;
/** The one a test file is asked to use, by the environment's `ENGINE`; Chromium if none. */
export const askedEngine: () => Promise<Engine>;
