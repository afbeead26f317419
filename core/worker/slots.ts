import type { AskOptions, Outcome, Reply } from './protocol.js';

/** One asked question on its way. */
export interface Call {
  readonly id: number;
  readonly question: string;
  readonly request: unknown;
  /** A newer one waits: if it is a generator, it is to stop. */
  superseded: boolean;
  /** Its promise is settled: nobody waits for the outcome any more. */
  settled: boolean;
  /** How many workers it has been the end of. */
  losses: number;
  /** Settles the promise with the outcome (AbortError if there is none) and frees the place in the slot. */
  finish(outcome?: Outcome<unknown>): void;
}

export interface Slots {
  ask(question: string, request: unknown, options: AskOptions): Promise<Reply<unknown>>;
  /** Drops all calls; their promises reject with AbortError. */
  clear(): void;
}

/**
 * The slot rule: of one slot one call is in flight and one waits; a newer one takes the place of the one that waits and lets the one
 * in flight be cancelled. Slots know nothing of each other.
 * @param send takes a call whose turn has come; calls its `finish` when the outcome is there
 * @param cancel told that a call in flight is aborted or superseded
 */
export function createSlots(send: (call: Call) => void, cancel: (call: Call) => void): Slots {
  const lanes = new Map<unknown, { flying: Call; waiting?: Call | undefined }>();
  let lastId = 0;

  return {
    ask(question, request, { slot, signal }) {
      return new Promise((resolve, reject) => {
        const settle = (outcome?: Outcome<unknown>) => {
          signal?.removeEventListener('abort', onAbort);
          call.settled = true;
          if (!outcome || 'cancelled' in outcome)
            reject(new DOMException(`"${question}" was aborted, or asked again meanwhile.`, 'AbortError'));
          else resolve(outcome);
        };
        const call: Call = {
          id: ++lastId,
          question,
          request,
          superseded: false,
          settled: false,
          losses: 0,
          finish(outcome) {
            settle(outcome);
            const lane = lanes.get(slot);
            if (lane?.waiting === call) lane.waiting = undefined;
            else if (lane?.flying === call) {
              const next = lane.waiting;
              if (next) {
                lanes.set(slot, { flying: next });
                send(next);
              } else lanes.delete(slot);
            }
          },
        };
        const onAbort = () => {
          const lane = lanes.get(slot);
          if (lane?.flying === call) {
            // Its place stays taken until the core has let go of it: a slot never floods the worker.
            settle();
            cancel(call);
          } else call.finish();
        };

        if (signal?.aborted) {
          settle();
          return;
        }
        signal?.addEventListener('abort', onAbort);
        const lane = lanes.get(slot);
        if (lane) {
          lane.waiting?.finish();
          lane.waiting = call;
          lane.flying.superseded = true;
          cancel(lane.flying);
        } else {
          lanes.set(slot, { flying: call });
          send(call);
        }
      });
    },
    clear() {
      const all = [...lanes.values()];
      lanes.clear();
      for (const lane of all) {
        lane.flying.finish();
        lane.waiting?.finish();
      }
    },
  };
}
