import type { LengthView } from "../quantity/format.ts";
import { askedLabel, type BankQuestion, taskLines } from "./bank.ts";
import { plainAnswer } from "./check-answer.ts";
import type { Assignment } from "./definition.ts";
import { type AskedAnswer, viewOf } from "./own-question.ts";
import { fnv1a64 } from "./random.ts";
import { allowed } from "./tolerance.ts";
import { element, type Xml, xmlFile } from "./xml.ts";

/**
 * A question bank as QTI 2.1: an item for each set of numbers, a test that gives every candidate one set of each question,
 * and the manifest of a content package. Source: QTI 2.1 information model and its XML schemas (final, 2012; profile of
 * the manifest, 2014). Answers are plain numbers in the unit that the prompt names, since QTI knows no units.
 */

export interface QtiFile {
  /** In the package, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

const qti = "http://www.imsglobal.org/xsd/imsqti_v2p1";
const qtiSchema = "http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd";
const packaging = "http://www.imsglobal.org/xsd/imscp_v1p1";
const packagingSchema = "http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd";
const instance = "http://www.w3.org/2001/XMLSchema-instance";

const namespaces = { xmlns: qti, "xmlns:xsi": instance, "xsi:schemaLocation": `${qti} ${qtiSchema}` };

/** Digits enough for any tolerance, and none that come from binary arithmetic. */
const figures = (value: number) => String(Number(value.toPrecision(12)));

const responseId = (index: number) => `RESPONSE_${index + 1}`;

function value(text: string): Xml {
  return element("value", {}, [text]);
}

function score(children: readonly Xml[]): Xml {
  return element("setOutcomeValue", { identifier: "SCORE" }, children);
}

/** The first expression sets the range, so the right answer stands first; a relative range of a negative number is empty. */
function comparison({ output, right, tolerance }: AskedAnswer, view: LengthView, id: string): Xml {
  const relative = tolerance.kind === "percent" && right > 0;
  const most = relative ? tolerance.percent : plainAnswer(output, allowed(tolerance, right, output, view), view);
  const mode = most === 0 ? "exact" : relative ? "relative" : "absolute";
  const attributes = { toleranceMode: mode, tolerance: mode === "exact" ? undefined : figures(most) };
  return element("equal", attributes, [element("correct", { identifier: id }), element("variable", { identifier: id })]);
}

function itemFile(own: BankQuestion, title: string, view: LengthView): string {
  const shown = viewOf(own.question, view);
  const { intro, given } = taskLines(own);
  const line = (text: string) => element("p", {}, [text]);
  const fractions = shown === "fraction" && own.asked.some(({ output }) => output.quantity === "length");
  const responses = own.asked.map(({ output, right }, index) =>
    element("responseDeclaration", { identifier: responseId(index), cardinality: "single", baseType: "float" }, [
      element("correctResponse", {}, [value(figures(plainAnswer(output, right, shown)))]),
    ]),
  );
  const entries = own.asked.map((asked, index) =>
    element("p", {}, [
      `${askedLabel(asked, shown)}: `,
      element("textEntryInteraction", { responseIdentifier: responseId(index), expectedLength: 12 }),
    ]),
  );
  const conditions = own.asked.map((asked, index) =>
    element("responseCondition", {}, [
      element("responseIf", {}, [
        comparison(asked, shown, responseId(index)),
        score([
          element("sum", {}, [element("variable", { identifier: "SCORE" }), element("baseValue", { baseType: "float" }, ["1"])]),
        ]),
      ]),
    ]),
  );
  return xmlFile(
    element(
      "assessmentItem",
      { ...namespaces, identifier: own.id, title, adaptive: false, timeDependent: false, "xml:lang": "en" },
      [
        ...responses,
        element(
          "outcomeDeclaration",
          { identifier: "SCORE", cardinality: "single", baseType: "float", normalMaximum: own.asked.length },
          [element("defaultValue", {}, [value("0")])],
        ),
        element("itemBody", {}, [
          ...intro
            .split(/\n+/)
            .filter((each) => each.trim() !== "")
            .map(line),
          ...given.map(line),
          ...(fractions ? [line("Write fractions of an inch as decimals: 1/16 in is 0.0625.")] : []),
          ...entries,
        ]),
        element("responseProcessing", {}, conditions),
      ],
    ),
  );
}

const itemPath = (id: string) => `items/${id}.xml`;
const testPath = "test.xml";

function testFile(assignment: Assignment, bank: readonly (readonly BankQuestion[])[]): string {
  const sections = bank.map((questions, index) =>
    element("assessmentSection", { identifier: `section-${index + 1}`, title: `Question ${index + 1}`, visible: false }, [
      element("selection", { select: 1 }),
      ...questions.map(({ id }) => element("assessmentItemRef", { identifier: id, href: itemPath(id) })),
    ]),
  );
  const total = element("sum", {}, [element("testVariables", { variableIdentifier: "SCORE" })]);
  return xmlFile(
    element("assessmentTest", { ...namespaces, identifier: "test", title: assignment.title }, [
      element("outcomeDeclaration", { identifier: "SCORE", cardinality: "single", baseType: "float" }, [
        element("defaultValue", {}, [value("0")]),
      ]),
      element("testPart", { identifier: "part-1", navigationMode: "nonlinear", submissionMode: "individual" }, sections),
      element("outcomeProcessing", {}, [score([total])]),
    ]),
  );
}

function manifestFile(assignment: Assignment, bank: readonly (readonly BankQuestion[])[]): string {
  const items = bank.flat();
  const resource = (id: string, type: string, path: string, dependencies: readonly Xml[] = []) =>
    element("resource", { identifier: id, type, href: path }, [element("file", { href: path }), ...dependencies]);
  const needed = items.map(({ id }) => element("dependency", { identifierref: `item-${id}` }));
  return xmlFile(
    element(
      "manifest",
      {
        xmlns: packaging,
        "xmlns:xsi": instance,
        "xsi:schemaLocation": `${packaging} ${packagingSchema}`,
        identifier: `bank-${fnv1a64(assignment.course + assignment.title).toString(16)}`,
      },
      [
        element("metadata", {}, [element("schema", {}, ["QTIv2.1 Package"]), element("schemaversion", {}, ["1.0.0"])]),
        element("organizations"),
        element("resources", {}, [
          resource("test-1", "imsqti_test_xmlv2p1", testPath, needed),
          ...items.map(({ id }) => resource(`item-${id}`, "imsqti_item_xmlv2p1", itemPath(id))),
        ]),
      ],
    ),
  );
}

/**
 * The files of a QTI 2.1 package; zipped with `imsmanifest.xml` at its root they are one.
 *
 * @param bank - from `bankQuestions`
 * @param view - units of length for questions that do not force any; fractions become decimal inches
 */
export function qtiFiles(
  assignment: Assignment,
  bank: readonly (readonly BankQuestion[])[],
  view: LengthView = "mm",
): readonly QtiFile[] {
  return [
    { path: "imsmanifest.xml", text: manifestFile(assignment, bank) },
    { path: testPath, text: testFile(assignment, bank) },
    ...bank.flat().map((own) => ({
      path: itemPath(own.id),
      text: itemFile(own, `${assignment.title}: ${own.sheet.title}, ${own.variant}`, view),
    })),
  ];
}
