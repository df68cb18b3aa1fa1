/** When the screen forgets what was typed, and when it rests. */

export interface IdleTimes {
  /** From the last touch until everything typed is forgotten [ms]. */
  readonly forgetAfter: number;
  /** How long before that it says so [ms]. */
  readonly warnBefore: number;
  /** How long the start stands still before the cards come [ms]. */
  readonly restAfter: number;
  /** How long a card stays [ms]. */
  readonly cardEvery: number;
}

export interface IdleEvents {
  /** It forgets soon; false: it was touched in time. */
  warn(soon: boolean): void;
  forget(): void;
  /** Number of the card to show, counted up from 0; undefined: it was touched. */
  rest(card: number | undefined): void;
}

export interface Idle {
  /** Somebody is there. */
  touch(): void;
  isResting(): boolean;
  change(times: IdleTimes): void;
  stop(): void;
}

/** Begins as if everything had just been forgotten: at the start, with nobody there. */
export function watchIdle(first: IdleTimes, events: IdleEvents): Idle {
  let times = first;
  let timers: ReturnType<typeof setTimeout>[] = [];
  let warned = false;
  let card: number | undefined;
  /** Goes on from card to card, so that no two rests begin with the same one. */
  let next = 0;

  const later = (run: () => void, after: number) => timers.push(setTimeout(run, after));
  const quiet = () => {
    for (const timer of timers) clearTimeout(timer);
    timers = [];
  };
  const showCard = () => {
    card = next++;
    events.rest(card);
    later(showCard, times.cardEvery);
  };
  const wait = () => {
    quiet();
    later(showCard, times.restAfter);
  };
  const forget = () => {
    warned = false;
    events.forget();
    wait();
  };
  const watch = () => {
    quiet();
    later(
      () => {
        warned = true;
        events.warn(true);
      },
      Math.max(0, times.forgetAfter - times.warnBefore),
    );
    later(forget, times.forgetAfter);
  };
  wait();
  return {
    touch() {
      if (card !== undefined) {
        card = undefined;
        events.rest(undefined);
      }
      if (warned) {
        warned = false;
        events.warn(false);
      }
      watch();
    },
    isResting: () => card !== undefined,
    change(after) {
      times = after;
      watch();
    },
    stop: quiet,
  };
}
