import { useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { denominators, type PadKey } from "./pad.ts";

interface Props {
  /** Fractions and units are for lengths. */
  readonly isLength: boolean;
  readonly takesGauge: boolean;
  readonly hasNext: boolean;
  press(key: PadKey): void;
  next(): void;
}

/** A key must not take the caret out of the field it types into. */
const stay = (event: Event) => event.preventDefault();

/** The number pad: keys for gloves, always in the same places. */
export function Pad({ isLength, takesGauge, hasNext, press, next }: Props) {
  const texts = useTexts(display);
  const digit = (value: number) => (
    <button type="button" class="key digit" onPointerDown={stay} onClick={() => press({ kind: "digit", digit: String(value) })}>
      {value}
    </button>
  );
  const over = (at: number) => {
    const denominator = denominators[at] ?? 2;
    return (
      <button
        type="button"
        class="key fraction"
        aria-label={`${texts.over(denominator)} ${texts.overLong[denominator]}`}
        disabled={!isLength}
        onPointerDown={stay}
        onClick={() => press({ kind: "over", denominator })}
      >
        {texts.over(denominator)}
      </button>
    );
  };
  const unit = (key: "mm" | "in" | "ga", able: boolean, words: string = key, spoken?: string) => (
    <button
      type="button"
      class="key words"
      aria-label={spoken}
      disabled={!able}
      onPointerDown={stay}
      onClick={() => press({ kind: "unit", unit: key })}
    >
      {words}
    </button>
  );
  return (
    <fieldset class="pad" aria-label={texts.pad}>
      {digit(7)}
      {digit(8)}
      {digit(9)}
      {over(0)}
      {over(1)}
      {digit(4)}
      {digit(5)}
      {digit(6)}
      {over(2)}
      {over(3)}
      {digit(1)}
      {digit(2)}
      {digit(3)}
      {over(4)}
      {over(5)}
      {digit(0)}
      <button type="button" class="key digit" onPointerDown={stay} onClick={() => press({ kind: "point" })}>
        {texts.point}
      </button>
      <button
        type="button"
        class="key words"
        aria-label={texts.andLong}
        disabled={!isLength}
        onPointerDown={stay}
        onClick={() => press({ kind: "and" })}
      >
        {texts.and}
      </button>
      <button
        type="button"
        class="key digit"
        aria-label={texts.backLong}
        onPointerDown={stay}
        onClick={() => press({ kind: "back" })}
      >
        {texts.back}
      </button>
      <button
        type="button"
        class="key words"
        aria-label={texts.clearLong}
        onPointerDown={stay}
        onClick={() => press({ kind: "clear" })}
      >
        {texts.clear}
      </button>
      {unit("mm", isLength)}
      {unit("in", isLength)}
      {unit("ga", takesGauge, texts.gauge, texts.gaugeLong)}
      <button type="button" class="key words wide" disabled={!hasNext} onPointerDown={stay} onClick={next}>
        {texts.next}
      </button>
    </fieldset>
  );
}
