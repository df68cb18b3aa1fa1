import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";

interface Props {
  readonly class: string;
  readonly summary: string;
  /** What is in it must be seen. */
  readonly open?: boolean;
  readonly onOpen?: () => void;
  readonly children: () => ComponentChildren;
}

/** Something seldom needed: what is in it is made only when it is opened. */
export function Fold({ class: name, summary, open = false, onOpen, children }: Props) {
  const element = useRef<HTMLDetailsElement>(null);
  const [unfolded, setUnfolded] = useState(false);
  const read = () => {
    const isOpen = element.current?.open ?? false;
    setUnfolded(isOpen);
    if (isOpen) onOpen?.();
  };
  // It may have been opened before there was a script to notice.
  useLayoutEffect(read, []);
  return (
    <details class={name} ref={element} open={open || undefined} onToggle={read}>
      <summary>{summary}</summary>
      {(unfolded || open) && children()}
    </details>
  );
}
