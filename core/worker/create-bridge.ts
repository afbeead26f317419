import { asking } from './errors.js';
import { JoinedLayers, type Layer } from './layer.js';
import { onPage } from './on-page.js';
import type { Ask, AskForReply, Outcome, QuestionRecord, ServedCore } from './protocol.js';
import { SentSources } from './sent-sources.js';
import { type Call, createSlots } from './slots.js';
import { startWorker } from './start-worker.js';
import { watchdog } from './watchdog.js';

export interface BridgeOptions {
  /** The layers of the core to begin with, the base among those they need: their sources become the worker, themselves are called where no worker can be had. */
  layers: readonly Layer[];
  /** Never start a worker. `globalThis[Symbol.for('bumpline.main-thread')] = true` before the first call does the same. */
  mainThread?: boolean;
  /** How long a worker may take to say that it is ready, ms. Default 3000. */
  readyMs?: number;
  /** How long a worker with something to do may stay silent, ms. Each slice of a generator is a sign of life. Default 5000. */
  stallMs?: number;
  /** How long a worker with nothing to do is kept, ms. Default 20000. */
  idleMs?: number;
}

export type BridgeMode = 'idle' | 'starting' | 'worker' | 'main-thread';

/** The way from the page to the core. */
export interface Bridge<Q extends QuestionRecord> {
  ask: Ask<Q>;
  askForReply: AskForReply<Q>;
  /** Adds layers that a question needs. A worker that runs without them is replaced by one that has them, which is asked all again. */
  join(layers: readonly Layer[]): void;
  readonly mode: BridgeMode;
  /** Ends the worker; calls under way reject with AbortError. The next call starts it again. */
  end(): void;
}

export function createBridge<Q extends QuestionRecord>({
  layers,
  mainThread,
  readyMs = 3000,
  stallMs = 5000,
  idleMs = 20_000,
}: BridgeOptions): Bridge<Q> {
  const joined = new JoinedLayers();
  joined.join(layers);
  const sources = new SentSources();
  let mode: BridgeMode = 'idle';
  /** Where calls go; undefined while there is no worker, or it is not ready. */
  let served: ServedCore | undefined;
  /** Ends the worker that is starting or running, if there is one. */
  let halt = () => {};
  /** The call a worker last said it was working on: the one to blame when it is lost. */
  let announced = 0;
  /** Calls whose turn has come and whose outcome has not. */
  const flying = new Map<number, Call>();

  const ready = watchdog(readyMs, fallBack);
  const stall = watchdog(stallMs, () => lose(`gave no sign of life for ${stallMs} ms and was stopped`));
  const idle = watchdog(idleMs, close);
  const slots = createSlots(send, (call) => served?.cancel(call.id));

  function send(call: Call): void {
    flying.set(call.id, call);
    if (mode === 'idle') start();
    else if (served) forward(call);
  }

  function forward(call: Call): void {
    const to = served as ServedCore;
    if (call.settled) {
      land(call);
      return;
    }
    // When a worker ends, what it was asked stays pending for ever: whatever ends it lands or forwards its calls again.
    to.answer(call.id, call.question, sources.numbered(call.request)).then(
      (outcome) => {
        if (!('unknown' in outcome)) land(call, outcome);
        else if (to === served) {
          sources.forget(outcome.unknown);
          forward(call);
        }
      },
      (error) => land(call, { ok: false, fault: String(error) }),
    );
    if (call.superseded) to.cancel(call.id);
    tend();
  }

  function land(call: Call, outcome?: Outcome<unknown>): void {
    if (!flying.delete(call.id)) return;
    call.finish(outcome);
    tend();
  }

  function forwardAll(): void {
    for (const call of [...flying.values()]) forward(call);
    tend();
  }

  /** Sets the clock that fits: a worker with work must show life, one without is ended after a while. */
  function tend(): void {
    stall.stop();
    idle.stop();
    if (mode === 'worker') (flying.size ? stall : idle).again();
  }

  function start(): void {
    if (mainThread || (globalThis as Record<symbol, unknown>)[Symbol.for('bumpline.main-thread')]) {
      fallBack();
      return;
    }
    mode = 'starting';
    try {
      const { worker, revoke } = startWorker(joined.script);
      let current = true;
      halt = () => {
        current = false;
        revoke();
        worker.terminate();
      };
      worker.addEventListener('message', ({ data }) => {
        if (!current) return;
        if (data === 'ready') {
          ready.stop();
          revoke();
          mode = 'worker';
          served = joined.inWorker(worker);
          forwardAll();
        } else {
          if (typeof data === 'number') announced = data;
          tend();
        }
      });
      const onError = (event: Event) => {
        event.preventDefault();
        if (!current) return;
        if (served) lose(`failed: ${(event as ErrorEvent).message ?? event.type}`);
        else fallBack();
      };
      worker.addEventListener('error', onError);
      worker.addEventListener('messageerror', onError);
      ready.again();
    } catch {
      fallBack();
    }
  }

  function close(): void {
    halt();
    halt = () => {};
    served = undefined;
    sources.forgetAll();
    mode = 'idle';
    ready.stop();
    tend();
  }

  /** No worker to be had on this page: from now on the core runs here. */
  function fallBack(): void {
    close();
    mode = 'main-thread';
    // What has been the end of a worker might be the end of the page.
    for (const call of [...flying.values()])
      if (call.losses) blame(call, 'ended its worker, and no other could be started');
    served = onPage(joined);
    forwardAll();
  }

  /** A worker that was ready is stuck or dead: another one gets its calls, a second chance included for the one to blame. */
  function lose(how: string): void {
    const guilty = flying.get(announced);
    close();
    // Calls that move up meanwhile wait for all to be judged.
    mode = 'starting';
    for (const call of [...flying.values()]) {
      if (call.settled) land(call);
      else if ((!guilty || guilty === call) && ++call.losses > 1) blame(call, how);
    }
    mode = 'idle';
    if (flying.size) start();
  }

  function blame(call: Call, how: string): void {
    land(call, { ok: false, fault: `The calculation "${call.question}" ${how}.` });
  }

  const askForReply = slots.ask as unknown as AskForReply<Q>;
  return {
    ask: asking(askForReply),
    askForReply,
    join(more) {
      if (!joined.join(more) || mode === 'idle' || mode === 'main-thread') return;
      close();
      if (flying.size) start();
    },
    get mode() {
      return mode;
    },
    end() {
      for (const id of flying.keys()) served?.cancel(id);
      flying.clear();
      slots.clear();
      if (mode !== 'main-thread') close();
    },
  };
}
