import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type Idle, watchIdle } from "../../src/components/display/idle.ts";
import { idleTimes, usual } from "../../src/components/display/settings.ts";

const events = { warn: vi.fn(), forget: vi.fn(), rest: vi.fn() };
let idle: Idle;

beforeEach(() => {
  vi.useFakeTimers();
  vi.clearAllMocks();
  idle = watchIdle(idleTimes(usual), events);
});
afterEach(() => {
  idle.stop();
  vi.useRealTimers();
});

test("forgets 90 s after the last touch, says so 15 s before, and not a moment earlier", () => {
  idle.touch();
  vi.advanceTimersByTime(60_000);
  idle.touch();
  vi.advanceTimersByTime(74_999);
  expect(events.warn).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(events.warn.mock.calls).toEqual([[true]]);
  vi.advanceTimersByTime(14_999);
  expect(events.forget).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(events.forget).toHaveBeenCalledTimes(1);
});

test("a touch after the warning takes it back and keeps everything", () => {
  idle.touch();
  vi.advanceTimersByTime(80_000);
  idle.touch();
  expect(events.warn.mock.calls).toEqual([[true], [false]]);
  vi.advanceTimersByTime(89_999);
  expect(events.forget).not.toHaveBeenCalled();
});

test("cards come when nobody is there, one after the other, and go with a touch; the next rest goes on with the next card", () => {
  vi.advanceTimersByTime(29_999);
  expect(events.rest).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(idle.isResting()).toBe(true);
  vi.advanceTimersByTime(40_000);
  idle.touch();
  expect(idle.isResting()).toBe(false);
  expect(events.rest.mock.calls).toEqual([[0], [1], [2], [undefined]]);
  vi.advanceTimersByTime(90_000 + 30_000);
  expect(events.rest.mock.calls.at(-1)).toEqual([3]);
});

test("another time holds from the moment it is chosen", () => {
  idle.touch();
  vi.advanceTimersByTime(50_000);
  idle.change(idleTimes({ ...usual, idle: 30 }));
  vi.advanceTimersByTime(29_999);
  expect(events.forget).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(events.forget).toHaveBeenCalledTimes(1);
});

test("nothing happens after it is stopped", () => {
  idle.touch();
  idle.stop();
  vi.advanceTimersByTime(1_000_000);
  expect(events.forget).not.toHaveBeenCalled();
  expect(events.rest).not.toHaveBeenCalled();
});
