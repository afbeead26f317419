import { afterEach, describe, expect, it, vi } from 'vitest';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import { coreOf } from './fake-worker.js';

const problems: Problem[] = [
  { code: 'out-of-range', path: 'drop', value: 400, limit: 150 },
  { code: 'missing', path: 'strut.top', value: undefined },
];

/** A generator of steps that take a stated time on a clock of the test's own. */
function clockedCore() {
  let now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  const log: string[] = [];
  const core = coreOf({
    *work({ steps, stepMs, throwAt }: { steps: number; stepMs: number; throwAt?: number }): Generator<void, string> {
      try {
        for (let step = 0; step < steps; step++) {
          if (step === throwAt) throw new RangeError('lost');
          now += stepMs;
          log.push('step');
          yield;
        }
        return 'done';
      } finally {
        log.push('end');
      }
    },
  });
  return { core, log, announce: () => log.push('slice') };
}

afterEach(() => vi.restoreAllMocks());

describe('the core', () => {
  it('answers a plain question at once', () => {
    const core = coreOf({ double: (x: number) => 2 * x });
    expect(core.answer(1, 'double', 21)).toEqual({ ok: true, value: 42 });
  });

  it('turns an InputError into all its problems', () => {
    const core = coreOf({
      refuse: (_: null) => {
        throw new InputError(problems);
      },
    });
    expect(core.answer(1, 'refuse', null)).toEqual({ ok: false, problems });
  });

  it('turns any other error into a fault that names it', () => {
    const core = coreOf({
      fail: (_: null) => {
        throw new TypeError('no such link');
      },
    });
    expect(core.answer(1, 'fail', null)).toEqual({ ok: false, fault: 'TypeError: no such link' });
  });

  it('calls an unknown question a fault, names of the language included', () => {
    const core = coreOf({}) as unknown as ReturnType<typeof coreOf<Record<string, (r: never) => unknown>>>;
    for (const name of ['lowring', 'toString', 'constructor'])
      expect(core.answer(1, name, null as never)).toEqual({
        ok: false,
        fault: `RangeError: There is no question "${name}".`,
      });
  });

  it('announces itself before a plain question too', () => {
    const log: string[] = [];
    const core = coreOf({ plain: (_: null) => log.push('run') });
    core.answer(1, 'plain', null, () => log.push('slice'));
    expect(log).toEqual(['slice', 'run']);
  });
});

describe('a generator', () => {
  it('is pumped in slices that end before 8 ms, as far as its steps allow', async () => {
    const { core, log, announce } = clockedCore();
    expect(await core.answer(1, 'work', { steps: 5, stepMs: 3 }, announce)).toEqual({ ok: true, value: 'done' });
    expect(log.join(' ')).toBe('slice step step slice step step slice step end');
  });

  it('with steps longer than a slice gets one step a slice', async () => {
    const { core, log, announce } = clockedCore();
    await core.answer(1, 'work', { steps: 2, stepMs: 12 }, announce);
    expect(log.join(' ')).toBe('slice step slice step slice end');
  });

  it('leaves the event loop a turn between slices', async () => {
    const { core, log, announce } = clockedCore();
    const answer = core.answer(1, 'work', { steps: 2, stepMs: 12 }, announce);
    await Promise.resolve();
    await Promise.resolve();
    expect(log).toEqual(['slice', 'step']);
    await answer;
  });

  it('stops between slices when cancelled, and may tidy up', async () => {
    const { core, log, announce } = clockedCore();
    const answer = core.answer(7, 'work', { steps: 100, stepMs: 12 }, announce);
    core.cancel(7);
    expect(await answer).toEqual({ ok: false, cancelled: true });
    expect(log).toEqual(['slice', 'step', 'end']);
  });

  it('is not touched by the cancelling of another call, nor by one that came before it', async () => {
    const { core } = clockedCore();
    core.cancel(7);
    const answer = core.answer(7, 'work', { steps: 3, stepMs: 12 });
    core.cancel(8);
    expect(await answer).toEqual({ ok: true, value: 'done' });
  });

  it('that throws half way is a fault, and an InputError half way its problems', async () => {
    const { core } = clockedCore();
    expect(await core.answer(1, 'work', { steps: 9, stepMs: 12, throwAt: 2 })).toEqual({
      ok: false,
      fault: 'RangeError: lost',
    });
    const refusing = coreOf({
      // biome-ignore lint/correctness/useYield: it refuses before its first step is over.
      *refuse(_: null): Generator<void, number> {
        throw new InputError(problems);
      },
    });
    expect(await refusing.answer(1, 'refuse', null)).toEqual({ ok: false, problems });
  });

  it('takes turns with the generators of other calls', async () => {
    const { core } = clockedCore();
    const order: number[] = [];
    const calls = [1, 2].map((id) => core.answer(id, 'work', { steps: 3, stepMs: 12 }, () => order.push(id)));
    await Promise.all(calls);
    expect(order).toEqual([1, 2, 1, 2, 1, 2, 1, 2]);
  });
});
