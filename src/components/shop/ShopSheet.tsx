import type { ComponentChildren } from "preact";
import type { Catalogue, Die, MaterialId, MeasuredBend, Outline, Punch, Shop } from "../../lib/catalogue.ts";
import type { Input, QuantityInput } from "../../lib/inputs.ts";
import { formatNumber, formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { carriedRatings, thickestPunched } from "../../lib/shop/carry-over.ts";
import { type SectionKey, shopLists, shopSections } from "../../lib/shop/fields.ts";
import { isBare } from "../../lib/shop/read-shop.ts";

type Data = Pick<Catalogue, "materials" | "shop">;

interface Props {
  readonly catalogue: Data;
  /** The shop's own file, where `catalogue` has the shop of this device. */
  readonly own?: Shop | undefined;
  readonly view: LengthView;
  /** Path the site is published under, without a slash at its end. */
  readonly root: string;
}

/** Sheets reach from here to there in the shop's file; a thickness beyond it says nothing. */
const thickestShown = 6;

function trimmed(text: string): string {
  return text.replace(/(\.\d*?)0+(?=\D|$)/, "$1").replace(/\.(?=\D|$)/, "");
}

/** A value of the shop as it is read: `1.6 mm`, `135°`, `14`. */
export function valueText(input: Input, value: unknown, view: LengthView): string {
  if (typeof value !== "number" || input.kind !== "quantity") return String(value ?? "");
  if (isBare(input as QuantityInput)) return String(value);
  const text = formatQuantity(value, input.quantity, view, input.fineness);
  return view === "fraction" ? text : trimmed(text);
}

const length = (value: number, view: LengthView) => trimmed(formatQuantity(value, "length", view, "setting"));

function at(shop: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], shop);
}

/** Numbers that went through inches and back differ in their last digits. */
const written = (value: unknown) =>
  JSON.stringify(value, (_, each: unknown) => (typeof each === "number" ? Number(each.toPrecision(7)) : each));
const same = (one: unknown, other: unknown) => written(one) === written(other);

/** Marks what this device has changed, with what the shop's own file says. */
function Changed({ was, children }: { was: string | undefined; children: ComponentChildren }) {
  if (was === undefined) return <>{children}</>;
  return (
    <span class="changed">
      {children} <small>changed here{was === "" ? "" : `; the file says ${was}`}</small>
    </span>
  );
}

function outlineText(each: Outline, view: LengthView): string {
  if (each.shape === "round") return `${length(each.diameter, view)} round`;
  if (each.shape === "square") return `${length(each.width, view)} square`;
  return `${length(each.width, view)} × ${length(each.height, view)}`;
}

interface TableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly ComponentChildren[])[];
  readonly changed?: boolean;
}

/** The first cell names its row. */
function Table({ caption, heads, rows, changed = false }: TableProps) {
  return (
    <div class="table-room">
      <table class="cards shop-table">
        <caption>
          {caption}
          {changed && <span class="changed"> (changed on this device)</span>}
        </caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {row.map((cell, place) =>
                place === 0 ? (
                  <th key={heads[place]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={heads[place]} data-label={heads[place]}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** What the machine's calculator is called, and where it stands. */
const calculators: Readonly<Record<SectionKey, readonly [path: string, words: string]>> = {
  brake: ["/bending/#brake-load", "Load on the brake"],
  shear: ["/cutting/#shear-load", "Load on the shear"],
  cornerCutter: ["/cutting/corners/#corner-cut", "Corner of a box"],
  bandSaw: ["/cutting/#saw-blade", "Blade for the saw"],
  punch: ["/punching/#punch-load", "Load on the punch"],
  rolls: ["/rolling/#roll-setting", "Setting of the rolls"],
  welder: ["/joining/spot-welding/#spot-setting", "Setting of the spot welder"],
};

function Machine({ section, catalogue, own, view, pages }: Omit<Props, "root"> & { section: SectionKey; pages: Pages }) {
  const { title, about, inputs } = shopSections[section];
  const { materials, shop } = catalogue;
  const machine = shop[section];
  const former = own?.[section];
  const was = (path: readonly string[], text: (value: unknown) => string) =>
    former && !same(at(machine, path), at(former, path)) ? text(at(former, path)) : undefined;
  const rating = (value: unknown) => {
    const { material, thickness, length: long } = value as Shop["brake"]["rating"];
    const over = (long as number | undefined) === undefined ? "" : ` over ${length(long, view)}`;
    return `${length(thickness, view)} ${materials[material].name}${over}`;
  };
  const plain = Object.entries<Input>(inputs).filter(
    ([key, input]) => input.kind !== "list" && key !== "name" && !key.includes("."),
  );
  const [path, words] = calculators[section];
  return (
    <section class="machine" aria-labelledby={`machine-${section}`}>
      <h3 id={`machine-${section}`}>
        <Changed was={was(["name"], String)}>{machine.name}</Changed>
      </h3>
      <p class="quiet">
        {title}. {about} <a href={pages(path)}>{words}</a>
      </p>
      <dl class="facts">
        {"rating" in machine && (
          <div class="wide">
            <dt>Rated for</dt>
            <dd>
              <Changed was={was(["rating"], rating)}>{rating(machine.rating)}</Changed>
            </dd>
          </div>
        )}
        {plain.map(([key, input]) => {
          const value = at(machine, [key]);
          if (value === undefined) return null;
          const text = (each: unknown) => (each === undefined ? "nothing" : valueText(input, each, view));
          return (
            <div key={key}>
              <dt>{input.label}</dt>
              <dd>
                <Changed was={was([key], text)}>{text(value)}</Changed>
              </dd>
            </div>
          );
        })}
        {section === "brake" && (
          <div class="wide">
            <dt>Fingers</dt>
            <dd>
              <Changed was={was(["fingers"], (all) => fingerText(all as readonly number[], view))}>
                {fingerText(shop.brake.fingers, view)}
              </Changed>
            </dd>
          </div>
        )}
        {section === "bandSaw" && (
          <div class="wide">
            <dt>Bands</dt>
            <dd>
              <Changed was={was(["bands"], () => "")}>
                {shop.bandSaw.bands.map(({ teeth, width }) => `${teeth} teeth an inch, ${length(width, view)} wide`).join("; ")}
              </Changed>
            </dd>
          </div>
        )}
      </dl>
      {section === "punch" && (
        <Table
          caption="Punches and the dies they fit"
          heads={["Punch", "Its die", "Other dies it enters"]}
          changed={was(["punches"], () => "") !== undefined || was(["dies"], () => "") !== undefined}
          rows={shop.punch.punches.map((punch) => [
            outlineText(punch, view),
            dieText(
              shop.punch.dies.find(({ letter }) => letter === punch.die),
              view,
            ),
            otherDies(punch, shop.punch.dies, view),
          ])}
        />
      )}
    </section>
  );
}

function fingerText(fingers: readonly number[], view: LengthView): string {
  if (view !== "mm") return fingers.map((each) => length(each, view)).join(", ");
  return `${fingers.map((each) => trimmed(formatNumber(each, 2))).join(", ")} mm`;
}

const dieText = (die: Die | undefined, view: LengthView) => (die ? `${die.letter}, ${outlineText(die, view)}` : "");

/** Round dies a little larger than a round punch, for thicker sheet. */
function otherDies(punch: Punch, dies: readonly Die[], view: LengthView): string {
  if (punch.shape !== "round") return "–";
  const others = dies.filter(
    (die) =>
      die.letter !== punch.die && die.shape === "round" && die.diameter > punch.diameter && die.diameter < 1.1 * punch.diameter,
  );
  return others.map((die) => dieText(die, view)).join("; ") || "–";
}

function BendTable({
  bends,
  materials,
  view,
}: {
  bends: readonly MeasuredBend[];
  materials: Data["materials"];
  view: LengthView;
}) {
  return (
    <Table
      caption="Bends measured here"
      heads={["Metal", "Thickness", "Inside radius", "Angle", "Bend deduction", "Pieces", "Date", "Lot, brake"]}
      rows={bends.map((bend) => [
        <>
          {materials[bend.material].name}
          {bend.onDevice && <small class="changed"> on this device</small>}
        </>,
        length(bend.thickness, view),
        length(bend.radius, view),
        `${bend.angle}°`,
        `${length(bend.deduction, view)} ± ${length(bend.uncertainty, view === "fraction" ? "inch" : view)}`,
        bend.pieces,
        bend.date,
        [bend.lot, bend.brake].filter(Boolean).join(", ") || "–",
      ])}
    />
  );
}

/** Thickness that a machine takes; marked where the plate's own thickness is less, which only the manual can allow. */
function Thickness({ value, rated, view }: { value: number; rated?: number; view: LengthView }) {
  if (value > thickestShown) return `over ${length(thickestShown, view)}`;
  const text = trimmed(formatQuantity(value, "length", view === "fraction" ? "inch" : view, "setting"));
  return rated !== undefined && value > rated * 1.0001 ? `${text} *` : text;
}

function Carried({ catalogue, view, pages }: Pick<Props, "catalogue" | "view"> & { pages: Pages }) {
  const { materials, shop } = catalogue;
  const on = (section: "brake" | "rolls" | "shear" | "cornerCutter") => shop[section].rating.material;
  const rows = carriedRatings(catalogue);
  const machines = ["brake", "rolls", "shear", "cornerCutter"] as const;
  const named = (id: MaterialId) =>
    machines.filter((machine) => on(machine) === id).map((machine) => shopSections[machine].title.toLowerCase());
  const rule = (path: string, words: string) => <a href={pages(path)}>{words}</a>;
  const round = shop.punch.punches.filter((punch) => punch.shape === "round");
  const others = shop.punch.punches.filter((punch) => punch.shape !== "round");
  const punches = [...round, ...others];
  return (
    <>
      <p>
        A plate names one metal. In another one the machine takes the sheet that loads it as much as the job on its plate. The
        plate and the manual win over every number here; a clamp, a frame or a stroke may be the limit where force and moment are
        not.
      </p>
      <ul>
        <li>
          <strong>Brake and rolls:</strong> by the bending moment, which goes with the yield strength Y and the square of the
          thickness: <var>T₂ = T₁ √(Y₁/Y₂)</var>. As in {rule("/bending/#brake-load", "the load on the brake")} and{" "}
          {rule("/rolling/#roll-setting", "the setting of the rolls")}.
        </li>
        <li>
          <strong>Shear:</strong> by the force, which under a sloping blade goes with the shear strength τ and the square of the
          thickness: <var>{shop.shear.rake > 0 ? "T₂ = T₁ √(τ₁/τ₂)" : "T₂ = T₁ τ₁/τ₂"}</var>
          {shop.shear.rake > 0 ? "" : ", for parallel blades with the thickness itself"}. As in{" "}
          {rule("/cutting/#shear-load", "the load on the shear")}.
        </li>
        <li>
          <strong>Corner cutter:</strong> the slope of its blades is not known, so the lower of both rules for a shear. As in{" "}
          {rule("/cutting/corners/#corner-cut", "the corner of a box")}.
        </li>
        <li>
          <strong>Spot welder:</strong> its plate is for mild steel, and nothing carries that over to other metals. See{" "}
          {rule("/joining/#weld-pair", "whether two metals weld")}.
        </li>
      </ul>
      <Table
        caption="Largest thickness at the full length of each machine"
        heads={["Metal", ...machines.map((machine) => shopSections[machine].title)]}
        rows={rows.map(({ material, ...row }) => [
          <>
            {materials[material].name}
            {named(material).length > 0 && <small> (on the plate of the {named(material).join(", ")})</small>}
          </>,
          ...machines.map((machine) => (
            <Thickness key={machine} value={row[machine]} rated={shop[machine].rating.thickness} view={view} />
          )),
        ])}
      />
      <p class="small">
        * More than the thickness on the plate. Force or moment would allow it; clearances, clamp and stroke may not. Only the
        manual can say.
      </p>
      <p>
        <strong>Punch:</strong> by the force of {shop.punch.name}, {formatQuantity(shop.punch.force, "force")}: edge × thickness ×
        shear strength. Small punches are limited by the stress in the punch itself, marked †. As in{" "}
        {rule("/punching/#punch-load", "the load on the punch")}. Which die fits the thickness is another question: see{" "}
        {rule("/punching/#die-fit", "the die for a punch")}.
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reached by keyboard */}
      <section class="table-frame" tabIndex={0} aria-label="Thickest sheet for each punch">
        <table class="shop-table">
          <caption>Thickest sheet for each punch</caption>
          <thead>
            <tr>
              <th scope="col">Metal</th>
              {punches.map((punch) => (
                <th key={punch.die + outlineText(punch, view)} scope="col" class="number">
                  {outlineText(punch, view)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ material }) => (
              <tr key={material}>
                <th scope="row">{materials[material].name}</th>
                {punches.map((punch) => {
                  const { thickness, by } = thickestPunched(catalogue, material, punch);
                  return (
                    <td key={punch.die + outlineText(punch, view)} class="number">
                      <Thickness value={thickness} view={view} />
                      {by === "stress" && thickness <= thickestShown && " †"}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

/** Full address of a page of the site. */
type Pages = (path: string) => string;

/** Everything in the shop's file, to be read and printed; at build, and again where this device has changed it. */
export function ShopSheet({ catalogue, own, view, root }: Props) {
  const { materials, shop } = catalogue;
  const pages: Pages = (path) => root + path;
  const stock = shopLists.stock.list.columns;
  return (
    <>
      {own && own.name !== shop.name && (
        <p>
          <Changed was={own.name}>{shop.name}</Changed>
        </p>
      )}
      <h2 id="machines">Machines</h2>
      {(Object.keys(shopSections) as SectionKey[]).map((section) => (
        <Machine key={section} section={section} catalogue={catalogue} own={own} view={view} pages={pages} />
      ))}
      <section class="machine" aria-labelledby="furnaces">
        <h3 id="furnaces">{shopLists.furnaces.title}</h3>
        {shop.furnaces.length === 0 ? (
          <p>There is none.</p>
        ) : (
          <Table
            caption="Furnaces for annealing"
            heads={["Furnace", "Hottest", "Strays from what was set", "Inside, wide × high × deep"]}
            changed={own !== undefined && !same(own.furnaces, shop.furnaces)}
            rows={shop.furnaces.map(({ name, hottest, control, width, height, depth }) => [
              name,
              formatQuantity(hottest, "temperature"),
              `± ${control} °C`,
              [width, height, depth].map((each) => length(each, view)).join(" × "),
            ])}
          />
        )}
      </section>

      <h2 id="stock">Stock</h2>
      <Table
        caption="Sheets"
        heads={["Metal", "Thickness", "Width", "Length"]}
        changed={own !== undefined && !same(own.stock, shop.stock)}
        rows={shop.stock.map((sheet) => [
          materials[sheet.material].name,
          valueText(stock.thickness as Input, sheet.thickness, view),
          valueText(stock.width as Input, sheet.width, view),
          valueText(stock.length as Input, sheet.length, view),
        ])}
      />

      <h2 id="bends">Measured bends</h2>
      <p>
        What practice pieces said on this brake. A blank worked out with the method “measured in this shop”, and the plan, take
        the best fitting one: same metal, thickness and radius within 5 %, and the same angle to 1°. How to measure one:{" "}
        <a href={pages("/bending/practice-pieces/")}>practice pieces</a>.
      </p>
      {shop.bends.length === 0 ? <p>None yet.</p> : <BendTable bends={shop.bends} materials={materials} view={view} />}

      <h2 id="other-metals">What the plates mean in other metals</h2>
      <Carried catalogue={catalogue} view={view} pages={pages} />
    </>
  );
}
