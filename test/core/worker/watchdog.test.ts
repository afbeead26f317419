import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { watchdog } from '../../../core/worker/watchdog.js';

const late = vi.fn();

beforeEach(() => {
  vi.useFakeTimers();
  late.mockClear();
});
afterEach(() => vi.useRealTimers());

it('a time limit runs out once, after its time', () => {
  watchdog(1000, late).again();
  vi.advanceTimersByTime(999);
  expect(late).not.toHaveBeenCalled();
  vi.advanceTimersByTime(5001);
  expect(late).toHaveBeenCalledTimes(1);
});

it('a time limit starts anew as a whole, in its second half as well', () => {
  const limit = watchdog(1000, late);
  limit.again();
  for (const ms of [300, 900, 999]) {
    vi.advanceTimersByTime(ms);
    limit.again();
  }
  expect(late).not.toHaveBeenCalled();
  expect(vi.getTimerCount()).toBe(1);
  vi.advanceTimersByTime(1000);
  expect(late).toHaveBeenCalledTimes(1);
});

it('a stopped time limit does not run out', () => {
  const limit = watchdog(1000, late);
  limit.again();
  vi.advanceTimersByTime(700);
  limit.stop();
  vi.advanceTimersByTime(5000);
  expect(late).not.toHaveBeenCalled();
});

it('a time limit that runs out while the page is away leaves half of it for what is heard on waking up', () => {
  const limit = watchdog(1000, late);
  limit.again();
  // A page that sleeps past the limit finds one timer due.
  vi.advanceTimersToNextTimer();
  expect(late).not.toHaveBeenCalled();
  expect(vi.getTimerCount()).toBe(1);
  vi.advanceTimersByTime(499);
  expect(late).not.toHaveBeenCalled();
});
