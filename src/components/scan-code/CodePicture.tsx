import type { Code } from "./qr.ts";

interface Props {
  readonly code: Code;
  /** What the code holds, for those who do not see it. */
  readonly label: string;
  readonly class?: string;
}

/** A code to scan. Black on white in dark colours too: many phones do not read it the other way round. */
export function CodePicture({ code: { size, path }, label, class: name }: Props) {
  return (
    <svg class={name} viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shape-rendering="crispEdges">
      <path fill="#fff" d={`M0 0h${size}v${size}H0z`} />
      <path class="code-ink" fill="#000" d={path} />
    </svg>
  );
}
