import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { FlatLayout } from "../../lib/part/flatten.ts";
import { type FoldingStep, foldingSteps, type OrderedStep, stillPositions } from "../../lib/part/folding-steps.ts";
import { solidOf } from "../../lib/part/solid.ts";
import { extentOf, paint, usualView } from "../../lib/part/view.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { phraseText } from "../../lib/quantity/phrase.ts";
import { useTexts } from "../../texts/context.ts";
import { plan } from "../../texts/en/plan.ts";
import { FoldedSheet } from "./FoldedSheet.tsx";
import { paperFit, seenFrom, treeAt, wholeExtent } from "./folding-view.ts";

interface Props {
  readonly name: string;
  readonly layout: FlatLayout;
  readonly view: LengthView;
  /** Bends, tabs and folded edges as they are made; without it the usual order of simple shapes. */
  readonly order?: readonly OrderedStep[] | undefined;
}

/** Where the folding stands, in words. */
function stepWords({ folding }: typeof plan, steps: readonly FoldingStep[], position: number, view: LengthView): string {
  const step = steps[Math.ceil(position) - 1];
  if (!step) return folding.before(steps.length);
  const words = folding.step(Math.ceil(position), steps.length, phraseText(step.words, view));
  return position === steps.length ? `${words} ${folding.finished}` : words;
}

/** The finished part, drawn in one direction. */
export function FinishedPicture({ name, layout }: Pick<Props, "name" | "layout">) {
  const { folding } = useTexts(plan);
  const { solid, painted, place } = useMemo(() => {
    const made = solidOf(layout);
    return {
      solid: made,
      painted: paint(made, treeAt(made, foldingSteps(layout), Number.POSITIVE_INFINITY), usualView),
      place: paperFit(extentOf(made, [1], usualView)),
    };
  }, [layout]);
  return (
    <figure class="drawing">
      <FoldedSheet solid={solid} painted={painted} fit={place} title={folding.finishedPicture(name)} />
      <figcaption>{folding.finishedCaption}</figcaption>
    </figure>
  );
}

/** Stills of the folding, for who has no script. */
function StillStrip({ name, layout, view, order }: Props) {
  const texts = useTexts(plan);
  const solid = solidOf(layout);
  const steps = foldingSteps(layout, order);
  const place = paperFit(wholeExtent(solid, steps, usualView, false));
  return (
    <ol class="fold-strip">
      {stillPositions(steps).map((position) => (
        <li key={position}>
          <FoldedSheet
            solid={solid}
            painted={paint(solid, treeAt(solid, steps, position), usualView)}
            fit={place}
            title={
              position === 0 ? texts.folding.flat(name) : texts.folding.after(name, Number(position.toFixed(1)), steps.length)
            }
          />
          <p>{stepWords(texts, steps, position, view)}</p>
        </li>
      ))}
    </ol>
  );
}

/** Seconds a step takes, and how much of them the sheet rests after it. */
const stepTime = 1.8;
const restShare = 0.25;

const still = () => matchMedia("(prefers-reduced-motion: reduce)").matches;

/** A position that can be set, or run to another one at the pace of the picture. */
function useRun(last: number) {
  const [held, setPosition] = useState(0);
  const [goal, setGoal] = useState<number>();
  const position = Math.min(held, last);
  const running = goal !== undefined && goal !== position;
  const now = useRef(position);
  now.current = position;

  useEffect(() => {
    if (goal === undefined) return;
    const way = Math.sign(goal - now.current);
    const arrived = (at: number) => way === 0 || way * (goal - at) <= 1e-9;
    if (still()) {
      // Whole steps, one after the other, without anything moving in between.
      const timer = setInterval(() => {
        const next = way > 0 ? Math.floor(now.current + 1e-9) + 1 : Math.ceil(now.current - 1e-9) - 1;
        setPosition(arrived(next) ? goal : next);
        if (arrived(next)) setGoal(undefined);
      }, stepTime * 1000);
      return () => clearInterval(timer);
    }
    let frame = 0;
    let before: number | undefined;
    let rest = 0;
    const move = (time: number) => {
      const seconds = Math.min(0.1, (time - (before ?? time)) / 1000);
      before = time;
      frame = requestAnimationFrame(move);
      if (rest > 0) {
        rest -= seconds;
        return;
      }
      const from = now.current;
      const whole = way > 0 ? Math.floor(from + 1e-9) + 1 : Math.ceil(from - 1e-9) - 1;
      const to = from + (way * seconds) / (stepTime * (1 - restShare));
      const next = way * (whole - to) <= 0 ? whole : to;
      if (next === whole) rest = stepTime * restShare;
      setPosition(arrived(next) ? goal : next);
      if (arrived(next)) setGoal(undefined);
    };
    frame = requestAnimationFrame(move);
    return () => cancelAnimationFrame(frame);
  }, [goal]);

  return {
    position,
    running,
    set: (value: number) => {
      setGoal(undefined);
      setPosition(value);
    },
    stop: () => setGoal(undefined),
    play: () => {
      if (position >= last) setPosition(0);
      now.current = position >= last ? 0 : position;
      setGoal(last);
    },
    /** To the end or the start of a step. */
    step: (way: 1 | -1) => {
      const to = way > 0 ? Math.min(last, Math.floor(position + 1e-9) + 1) : Math.max(0, Math.ceil(position - 1e-9) - 1);
      if (!still()) return setGoal(to);
      setGoal(undefined);
      setPosition(to);
    },
  };
}

/** Degrees the view turns by when it is dragged across one pixel. */
const dragTurn = 0.6;
const turnStep = 5;

/** The blank folding in the order of its bends, played, stepped through or drawn along, and seen from any side. */
export function FoldingPicture(props: Props) {
  const { name, layout, view, order } = props;
  const texts = useTexts(plan);
  const { folding } = texts;
  const { solid, steps } = useMemo(
    () => ({
      solid: solidOf(layout),
      steps: foldingSteps(layout, order),
    }),
    [layout, order],
  );
  const [from, setFrom] = useState(150);
  const [live, setLive] = useState(false);
  useEffect(() => setLive(true), []);
  const last = steps.length;
  const run = useRun(last);
  const { position, running } = run;
  const tree = useMemo(() => treeAt(solid, steps, position), [solid, steps, position]);
  const place = useMemo(() => paperFit(wholeExtent(solid, steps, usualView, true)), [solid, steps]);
  const painted = useMemo(() => paint(solid, tree, { ...usualView, from }), [solid, tree, from]);
  const side = seenFrom(from, folding.compass);
  const drag = useRef<{ x: number; from: number }>();
  if (last === 0) return null;

  const words = stepWords(texts, steps, position, view);
  const step = steps[Math.ceil(position) - 1];
  const part = position - Math.floor(position);
  const soFar = step && part > 0 ? ` ${folding.done(Math.round(part * 100))}` : "";

  return (
    <section class="plan-folding not-on-paper">
      <h3>{folding.title}</h3>
      <div class="fold-live needs-script">
        <div
          class="fold-stage"
          onPointerDown={(event) => {
            drag.current = { x: event.clientX, from };
            event.currentTarget.setPointerCapture(event.pointerId);
          }}
          onPointerMove={({ clientX }) => {
            if (!drag.current) return;
            const turned = drag.current.from + (clientX - drag.current.x) * dragTurn;
            setFrom((((Math.round(turned / turnStep) * turnStep) % 360) + 360) % 360);
          }}
          onPointerUp={() => {
            drag.current = undefined;
          }}
          onPointerCancel={() => {
            drag.current = undefined;
          }}
        >
          <FoldedSheet
            solid={solid}
            painted={painted}
            fit={place}
            active={part > 0 ? step?.id : undefined}
            title={folding.picture(name, side, words)}
          />
        </div>
        <p class="fold-words" aria-live="polite">
          {words}
        </p>
        <div class="fold-controls">
          <div class="fold-buttons">
            <button type="button" class="first" onClick={running ? run.stop : run.play}>
              {running ? folding.pause : position >= last ? folding.playAgain : folding.play}
            </button>
            {/* Not disabled: a button that is would lose the focus at the end of the way. */}
            <button type="button" aria-label={folding.backOne} aria-disabled={position <= 0} onClick={() => run.step(-1)}>
              {folding.back}
            </button>
            <button type="button" aria-label={folding.nextStep} aria-disabled={position >= last} onClick={() => run.step(1)}>
              {folding.next}
            </button>
          </div>
          <label>
            <span>{folding.soFar}</span>
            <input
              type="range"
              min="0"
              max={last}
              step="0.05"
              value={position}
              aria-valuetext={words + soFar}
              onInput={({ currentTarget }) => run.set(Number(currentTarget.value))}
            />
          </label>
          <label>
            <span>{folding.walk}</span>
            <input
              type="range"
              min="0"
              max={360 - turnStep}
              step={turnStep}
              value={from}
              aria-valuetext={folding.seenFrom(side)}
              onInput={({ currentTarget }) => setFrom(Number(currentTarget.value))}
            />
          </label>
        </div>
      </div>
      {!live && <StillStrip {...props} />}
      <p class="fold-note quiet">
        {order ? folding.inOrder : folding.inUsualOrder} {folding.note}
      </p>
    </section>
  );
}
