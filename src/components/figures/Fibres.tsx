import { bendAllowance } from "../../lib/bending/bend-allowance.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { arcPath, at, away, Line, Note, Paper, Path, Size, spot } from "./pen.tsx";
import { stripPath } from "./section.ts";

const bend = { angle: 90, radius: 1, thickness: 1, kFactor: 0.45 };
const lines = 6;

/** A strip scribed with even lines before and after bending: wider apart outside, closer inside, unchanged at the neutral line. */
export default function Fibres() {
  const { fibres: texts } = useTexts(figuresBending);
  const scale = 58;
  const { thickness, radius, kFactor, angle } = bend;
  const zone = bendAllowance(bend);
  const straight = 1.15;
  const flat = { scale, origin: spot(40, 92) };
  const whole = 2 * straight + zone;
  const steps = [{ ahead: straight }, { turn: angle, radius }, { ahead: straight }] as const;
  const bent = { scale, origin: spot(84, 306) };
  const centre = spot(bent.origin.x + scale * straight, bent.origin.y - scale * (radius + thickness));
  const neutral = scale * (radius + kFactor * thickness);
  const marks = Array.from({ length: lines + 1 }, (_, index) => index / lines);
  return (
    <Paper height={330} title={texts.title}>
      <Path d={stripPath([{ ahead: whole }], thickness, flat).d} kind="sheet" />
      {marks.map((mark) => {
        const x = flat.origin.x + scale * (straight + mark * zone);
        return <Line key={mark} from={spot(x, flat.origin.y)} to={spot(x, flat.origin.y - scale * thickness)} />;
      })}
      <Line
        from={spot(flat.origin.x - 8, flat.origin.y - scale * (1 - kFactor) * thickness)}
        to={spot(flat.origin.x + scale * whole + 8, flat.origin.y - scale * (1 - kFactor) * thickness)}
        kind="neutral"
      />
      <Size
        from={spot(flat.origin.x + scale * straight, flat.origin.y - scale * thickness)}
        to={spot(flat.origin.x + scale * (straight + zone), flat.origin.y - scale * thickness)}
        off={14}
        text={texts.used}
      />
      <Path d={stripPath(steps, thickness, bent).d} kind="sheet" />
      <path class="stretch" d={arcPath(centre, scale * (radius + thickness), -90, 0)} />
      <path class="squeeze" d={arcPath(centre, scale * radius, -90, 0)} />
      {marks.map((mark) => {
        const direction = -90 + mark * angle;
        return (
          <Line
            key={mark}
            from={away(centre, direction, scale * radius)}
            to={away(centre, direction, scale * (radius + thickness))}
          />
        );
      })}
      <path
        class="neutral"
        d={`M${at(spot(bent.origin.x - 8, centre.y + neutral))}${arcPath(centre, neutral, -90, 0, "L")}L${at(spot(centre.x + neutral, centre.y - scale * straight - 8))}`}
      />
      <circle class="dot" cx={centre.x} cy={centre.y} r={2} />
      <Line from={centre} to={away(centre, -68, scale * radius)} />
      <Note
        to={away(centre, -68, scale * radius * 0.55)}
        from={spot(centre.x - 24, centre.y - 46)}
        lines={texts.radius}
        anchor="end"
      />
      <Note to={away(centre, -40, scale * (radius + thickness))} from={spot(272, 300)} lines={texts.stretched} end="arrow" />
      <Note to={away(centre, -52, scale * radius)} from={spot(112, 186)} lines={texts.squeezed} anchor="end" end="arrow" />
      <Note to={spot(centre.x + neutral, centre.y - scale * 0.4)} from={spot(268, 150)} lines={texts.neutral} end="arrow" />
      <Size
        from={spot(bent.origin.x, centre.y + scale * radius)}
        to={spot(bent.origin.x, centre.y + neutral)}
        off={-18}
        text="K·T"
        outside="from"
      />
      <Size
        from={spot(bent.origin.x, bent.origin.y - scale * thickness)}
        to={spot(bent.origin.x, bent.origin.y)}
        off={-44}
        text="T"
      />
    </Paper>
  );
}
