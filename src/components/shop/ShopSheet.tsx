import type { ComponentChildren } from "preact";
import type { Catalogue, Die, MaterialId, MeasuredBend, Outline, Punch, Shop } from "../../lib/catalogue.ts";
import type { Input, QuantityInput } from "../../lib/inputs.ts";
import { formatNumber, formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { carriedRatings, thickestPunched } from "../../lib/shop/carry-over.ts";
import { type SectionKey, shopLists, shopSections } from "../../lib/shop/fields.ts";
import { isBare } from "../../lib/shop/read-shop.ts";
import { useTexts } from "../../texts/context.ts";
import { shop as shopTexts } from "../../texts/en/shop.ts";

type Texts = typeof shopTexts;

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
  const texts = useTexts(shopTexts);
  if (was === undefined) return <>{children}</>;
  return (
    <span class="changed">
      {children}{" "}
      <small>
        {texts.changedHere}
        {was === "" ? "" : texts.fileSays(was)}
      </small>
    </span>
  );
}

function outlineText(texts: Texts, each: Outline, view: LengthView): string {
  if (each.shape === "round") return texts.round(length(each.diameter, view));
  if (each.shape === "square") return texts.square(length(each.width, view));
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
  const texts = useTexts(shopTexts);
  return (
    <div class="table-room">
      <table class="cards shop-table">
        <caption>
          {caption}
          {changed && <span class="changed"> {texts.changedOnDevice}</span>}
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

/** Where the calculator of each machine stands. */
const calculators: Readonly<Record<SectionKey, string>> = {
  brake: "/bending/#brake-load",
  shear: "/cutting/#shear-load",
  cornerCutter: "/cutting/corners/#corner-cut",
  bandSaw: "/cutting/#saw-blade",
  punch: "/punching/#punch-load",
  rolls: "/rolling/#roll-setting",
  welder: "/joining/spot-welding/#spot-setting",
};

function Machine({ section, catalogue, own, view, pages }: Omit<Props, "root"> & { section: SectionKey; pages: Pages }) {
  const texts = useTexts(shopTexts);
  const { title, about, inputs } = shopSections[section];
  const { materials, shop } = catalogue;
  const machine = shop[section];
  const former = own?.[section];
  const was = (path: readonly string[], text: (value: unknown) => string) =>
    former && !same(at(machine, path), at(former, path)) ? text(at(former, path)) : undefined;
  const rating = (value: unknown) => {
    const { material, thickness, length: long } = value as Shop["brake"]["rating"];
    const [sheet, metal] = [length(thickness, view), materials[material].name];
    return (long as number | undefined) === undefined
      ? texts.rating(sheet, metal)
      : texts.ratingOver(sheet, metal, length(long, view));
  };
  const plain = Object.entries<Input>(inputs).filter(
    ([key, input]) => input.kind !== "list" && key !== "name" && !key.includes("."),
  );
  return (
    <section class="machine" aria-labelledby={`machine-${section}`}>
      <h3 id={`machine-${section}`}>
        <Changed was={was(["name"], String)}>{machine.name}</Changed>
      </h3>
      <p class="quiet">
        {title}. {about} <a href={pages(calculators[section])}>{texts.calculators[section]}</a>
      </p>
      <dl class="facts">
        {"rating" in machine && (
          <div class="wide">
            <dt>{texts.ratedFor}</dt>
            <dd>
              <Changed was={was(["rating"], rating)}>{rating(machine.rating)}</Changed>
            </dd>
          </div>
        )}
        {plain.map(([key, input]) => {
          const value = at(machine, [key]);
          if (value === undefined) return null;
          const text = (each: unknown) => (each === undefined ? texts.nothing : valueText(input, each, view));
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
            <dt>{texts.fingers}</dt>
            <dd>
              <Changed was={was(["fingers"], (all) => fingerText(all as readonly number[], view))}>
                {fingerText(shop.brake.fingers, view)}
              </Changed>
            </dd>
          </div>
        )}
        {section === "bandSaw" && (
          <div class="wide">
            <dt>{texts.bands}</dt>
            <dd>
              <Changed was={was(["bands"], () => "")}>
                {shop.bandSaw.bands.map(({ teeth, width }) => texts.band(teeth, length(width, view))).join("; ")}
              </Changed>
            </dd>
          </div>
        )}
      </dl>
      {section === "punch" && (
        <Table
          caption={texts.punches.caption}
          heads={texts.punches.heads}
          changed={was(["punches"], () => "") !== undefined || was(["dies"], () => "") !== undefined}
          rows={shop.punch.punches.map((punch) => [
            outlineText(texts, punch, view),
            dieText(
              texts,
              shop.punch.dies.find(({ letter }) => letter === punch.die),
              view,
            ),
            otherDies(texts, punch, shop.punch.dies, view),
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

const dieText = (texts: Texts, die: Die | undefined, view: LengthView) =>
  die ? `${die.letter}, ${outlineText(texts, die, view)}` : "";

/** Round dies a little larger than a round punch, for thicker sheet. */
function otherDies(texts: Texts, punch: Punch, dies: readonly Die[], view: LengthView): string {
  if (punch.shape !== "round") return "–";
  const others = dies.filter(
    (die) =>
      die.letter !== punch.die && die.shape === "round" && die.diameter > punch.diameter && die.diameter < 1.1 * punch.diameter,
  );
  return others.map((die) => dieText(texts, die, view)).join("; ") || "–";
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
  const texts = useTexts(shopTexts);
  return (
    <Table
      caption={texts.bends.caption}
      heads={texts.bends.heads}
      rows={bends.map((bend) => [
        <>
          {materials[bend.material].name}
          {bend.onDevice && <small class="changed"> {texts.onDevice}</small>}
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
  const texts = useTexts(shopTexts).otherMetals;
  if (value > thickestShown) return texts.over(length(thickestShown, view));
  const text = trimmed(formatQuantity(value, "length", view === "fraction" ? "inch" : view, "setting"));
  return rated !== undefined && value > rated * 1.0001 ? `${text} *` : text;
}

function Carried({ catalogue, view, pages }: Pick<Props, "catalogue" | "view"> & { pages: Pages }) {
  const texts = useTexts(shopTexts);
  const words = texts.otherMetals;
  const { materials, shop } = catalogue;
  const on = (section: "brake" | "rolls" | "shear" | "cornerCutter") => shop[section].rating.material;
  const rows = carriedRatings(catalogue);
  const machines = ["brake", "rolls", "shear", "cornerCutter"] as const;
  const named = (id: MaterialId) =>
    machines.filter((machine) => on(machine) === id).map((machine) => shopSections[machine].title);
  const rule = (path: string, said: string) => <a href={pages(path)}>{said}</a>;
  const round = shop.punch.punches.filter((punch) => punch.shape === "round");
  const others = shop.punch.punches.filter((punch) => punch.shape !== "round");
  const punches = [...round, ...others];
  return (
    <>
      <p>{words.about}</p>
      <ul>
        <li>
          <strong>{words.brakeAndRolls}</strong> {words.byMoment} <var>T₂ = T₁ √(Y₁/Y₂)</var>. {words.asIn}{" "}
          {rule("/bending/#brake-load", words.loadOnBrake)} {words.and} {rule("/rolling/#roll-setting", words.settingOfRolls)}.
        </li>
        <li>
          <strong>{words.shear}</strong> {words.byForce} <var>{shop.shear.rake > 0 ? "T₂ = T₁ √(τ₁/τ₂)" : "T₂ = T₁ τ₁/τ₂"}</var>
          {shop.shear.rake > 0 ? "" : words.parallel}. {words.asIn} {rule("/cutting/#shear-load", words.loadOnShear)}.
        </li>
        <li>
          <strong>{words.cornerCutter}</strong> {words.byLower} {words.asIn}{" "}
          {rule("/cutting/corners/#corner-cut", words.cornerOfBox)}.
        </li>
        <li>
          <strong>{words.welder}</strong> {words.notCarried} {rule("/joining/#weld-pair", words.weldPair)}.
        </li>
      </ul>
      <Table
        caption={words.caption}
        heads={[words.metal, ...machines.map((machine) => shopSections[machine].title)]}
        rows={rows.map(({ material, ...row }) => [
          <>
            {materials[material].name}
            {named(material).length > 0 && <small> {words.onPlate(named(material))}</small>}
          </>,
          ...machines.map((machine) => (
            <Thickness key={machine} value={row[machine]} rated={shop[machine].rating.thickness} view={view} />
          )),
        ])}
      />
      <p class="small">{words.moreThanPlate}</p>
      <p>
        <strong>{words.punch}</strong> {words.byPunch(shop.punch.name, formatQuantity(shop.punch.force, "force"))} {words.asIn}{" "}
        {rule("/punching/#punch-load", words.loadOnPunch)}. {words.whichDie} {rule("/punching/#die-fit", words.dieForPunch)}.
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reached by keyboard */}
      <section class="table-frame" tabIndex={0} aria-label={words.punchCaption}>
        <table class="shop-table">
          <caption>{words.punchCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.metal}</th>
              {punches.map((punch) => (
                <th key={punch.die + outlineText(texts, punch, view)} scope="col" class="number">
                  {outlineText(texts, punch, view)}
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
                    <td key={punch.die + outlineText(texts, punch, view)} class="number">
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
  const texts = useTexts(shopTexts);
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
      <h2 id="machines">{texts.machines}</h2>
      {(Object.keys(shopSections) as SectionKey[]).map((section) => (
        <Machine key={section} section={section} catalogue={catalogue} own={own} view={view} pages={pages} />
      ))}
      <section class="machine" aria-labelledby="furnaces">
        <h3 id="furnaces">{shopLists.furnaces.title}</h3>
        {shop.furnaces.length === 0 ? (
          <p>{texts.none}</p>
        ) : (
          <Table
            caption={texts.furnaces.caption}
            heads={texts.furnaces.heads}
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

      <h2 id="stock">{texts.stock.title}</h2>
      <Table
        caption={texts.stock.caption}
        heads={texts.stock.heads}
        changed={own !== undefined && !same(own.stock, shop.stock)}
        rows={shop.stock.map((sheet) => [
          materials[sheet.material].name,
          valueText(stock.thickness as Input, sheet.thickness, view),
          valueText(stock.width as Input, sheet.width, view),
          valueText(stock.length as Input, sheet.length, view),
        ])}
      />

      <h2 id="bends">{texts.bends.title}</h2>
      <p>
        {texts.bends.about} <a href={pages("/bending/practice-pieces/")}>{texts.bends.practicePieces}</a>.
      </p>
      {shop.bends.length === 0 ? <p>{texts.bends.none}</p> : <BendTable bends={shop.bends} materials={materials} view={view} />}

      <h2 id="other-metals">{texts.otherMetals.title}</h2>
      <Carried catalogue={catalogue} view={view} pages={pages} />
    </>
  );
}
