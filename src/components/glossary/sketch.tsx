import type { ComponentChildren } from "preact";
import type { glossaryDrawings } from "../../texts/en/glossary-drawings.ts";

/** Size of every drawing of the glossary: small enough to stand beside a sentence. */
export const paper = { width: 220, height: 132 } as const;

type About = keyof typeof glossaryDrawings.about;
/** What is drawn, given the words in it in the language of the page. */
type Draw = (labels: typeof glossaryDrawings.labels) => ComponentChildren;

export interface SketchKind {
  /** Which of the texts says what is drawn, for those who cannot see it; the word that is marked in it is added. */
  readonly about: About;
  readonly draw: Draw;
}
/** Drawings that share their ground, each with another part of it marked. */
export type Sketches = Readonly<Record<string, SketchKind>>;

/** The part of a drawing that the word stands for. */
export function Lit({ children }: { children: ComponentChildren }) {
  return <g class="lit">{children}</g>;
}

export function Sketch({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    <svg class="fig sketch" viewBox={`0 0 ${paper.width} ${paper.height}`} role="img" aria-label={label}>
      {children}
    </svg>
  );
}

/** Outline of an upright rectangle. */
export const box = (x: number, y: number, width: number, height: number) => `M${x} ${y}h${width}v${height}h${-width}Z`;

/** The same ground for several words: `about` once, and a drawing of each part on it. */
export function onGround<Part extends string>(
  about: About,
  ground: Draw,
  parts: Readonly<Record<Part, Draw>>,
): Readonly<Record<Part, SketchKind>> {
  const entries = Object.entries<Draw>(parts).map(([part, mark]) => [
    part,
    {
      about,
      draw: (labels: typeof glossaryDrawings.labels) => (
        <>
          {ground(labels)}
          <Lit>{mark(labels)}</Lit>
        </>
      ),
    },
  ]);
  return Object.fromEntries(entries) as Record<Part, SketchKind>;
}
