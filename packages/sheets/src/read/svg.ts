import { parseXml, XmlElement } from "@rgrove/parse-xml";
import { type FileUnit, LayerSorter, type ReadDrawing, unread } from "./drawing.ts";
import { strokesOf } from "./svg-path.ts";

/**
 * Reads path, line, polyline, polygon and rect of an SVG as strokes, each on the layer of the group it stands in; everything else is left out and told.
 * Source: SVG 2. The plan's y goes up, SVG's down.
 */
export function readSvg(text: string): ReadDrawing {
	let root: XmlElement | null;
	try {
		root = parseXml(text, { includeOffsets: true, ignoreUndefinedEntities: true }).root;
	} catch (error) {
		const { line, message } = error as { readonly line?: number; readonly message: string };
		const reason = message.split("\n")[0]?.replace(/ \(line \d+, column \d+\)/, "") ?? "";
		return unread(line === undefined ? "" : `line ${line}`, `XML that cannot be read (${reason})`, "an SVG as XML");
	}
	if (root === null || plainName(root) !== "svg")
		return unread(
			"",
			root === null ? "no element" : `the element <${root.name}>`,
			"an SVG, whose outermost element is <svg>",
		);
	const sorter = new LayerSorter();
	const walk: Walk = { sorter, placeOf: placesIn(text), hiding: hidingClasses(root) };
	for (const child of childrenOf(root)) visit(child, { layer: "", labelled: false, transform: "", depth: 0 }, walk);
	return { ok: true, drawing: { kind: "svg", unit: unitOf(root), layers: sorter.layers } };
}

interface Walk {
	readonly sorter: LayerSorter;
	readonly placeOf: (element: XmlElement) => string;
	/** Classes whose elements are not shown. */
	readonly hiding: ReadonlySet<string>;
}

interface Within {
	/** Groups that only carry a transform or a look keep the layer above them. */
	readonly layer: string;
	/** The layer is one by its label: groups in it have ids of their own without being layers. */
	readonly labelled: boolean;
	/** Of all groups round it, outermost first. */
	readonly transform: string;
	readonly depth: number;
}

/** Deeper than anyone groups. */
const DEEPEST = 100;

/** What shows nothing where it stands. */
const UNSEEN = new Set([
	"defs",
	"clipPath",
	"mask",
	"pattern",
	"symbol",
	"marker",
	"title",
	"desc",
	"metadata",
	"style",
	"script",
	"linearGradient",
	"radialGradient",
	"filter",
	"namedview",
]);

function visit(element: XmlElement, within: Within, walk: Walk): void {
	const name = plainName(element);
	if (UNSEEN.has(name)) return;
	const place = walk.placeOf(element);
	const isGroup = GROUPS.has(name);
	const label = isGroup ? labelOf(element) : undefined;
	const id = isGroup && !within.labelled ? nameOf(element.attributes.id) : undefined;
	const layer = label ?? id ?? within.layer;
	const labelled = within.labelled || label !== undefined;
	const why = whyLeftOut(element, within.depth, walk.hiding);
	if (why !== null) {
		walk.sorter.leaveOut(layer, why, place);
		return;
	}
	const { attributes } = element;
	const transform = `${within.transform} ${attributes.transform ?? ""}`.trim();
	if (isGroup) {
		for (const child of childrenOf(element))
			visit(child, { layer, labelled, transform, depth: within.depth + 1 }, walk);
		return;
	}
	const { strokes, leftOut } = strokesOf(dataOf(name, attributes) ?? "", transform, place);
	const scale = Number(attributes["data-scale"] ?? Number.NaN);
	for (const stroke of strokes) walk.sorter.add(layer, scale > 0 ? { ...stroke, scale } : stroke);
	for (const what of leftOut) walk.sorter.leaveOut(layer, what, place);
}

const GROUPS = new Set(["g", "a", "switch"]);

function whyLeftOut(element: XmlElement, depth: number, hiding: ReadonlySet<string>): string | null {
	const { attributes } = element;
	const name = plainName(element);
	const classes = (attributes.class ?? "").split(/\s+/);
	if (isHidden(attributes) || classes.some((each) => hiding.has(each)))
		return "something hidden: allowed is what is seen";
	if (depth > DEEPEST) return `groups nested over ${DEEPEST} deep: ungroup them first`;
	if (classes.includes("hatch")) return "hatching: it is no wall";
	if (GROUPS.has(name) || dataOf(name, attributes) !== null) return null;
	if (name === "rect") return "a rect with round corners: allowed are sharp ones";
	return WORDS[name] ?? `<${name}>: ${ALLOWED}`;
}

const ALLOWED = "allowed are path, line, polyline, polygon and rect";

const WORDS: Readonly<Record<string, string>> = {
	circle: `a whole circle: ${ALLOWED}`,
	ellipse: `an ellipse: ${ALLOWED}`,
	text: "text: it is no wall",
	image: "a picture: it is no wall",
	use: "a copy of another part (use): make it a part of its own first",
	svg: "a drawing in the drawing: take it apart first",
};

type Attributes = Readonly<Record<string, string>>;

/** A shape as path data; null for what is none. Source: SVG 2, chapter 10 "Basic shapes". */
function dataOf(name: string, attributes: Attributes): string | null {
	const at = (key: string) => Number(attributes[key] ?? 0);
	switch (name) {
		case "path":
			return attributes.d ?? "";
		case "line":
			return `M${at("x1")} ${at("y1")}L${at("x2")} ${at("y2")}`;
		case "polyline":
		case "polygon":
			return `M${attributes.points ?? ""}${name === "polygon" ? "Z" : ""}`;
		case "rect":
			return at("rx") > 0 || at("ry") > 0
				? null
				: `M${at("x")} ${at("y")}h${at("width")}v${at("height")}h${-at("width")}Z`;
		default:
			return null;
	}
}

const isHidden = ({ display, visibility, style = "" }: Attributes): boolean =>
	display === "none" ||
	visibility === "hidden" ||
	/(?:^|;)\s*(?:display\s*:\s*none|visibility\s*:\s*hidden)/.test(style);

/** Classes that a style sheet in the file hides; only by a rule for the class alone, as programs write them for a layer that is off. */
function hidingClasses(root: XmlElement): Set<string> {
	const outer = childrenOf(root);
	const inner = outer.filter((element) => plainName(element) === "defs").flatMap(childrenOf);
	const sheets = [...outer, ...inner].filter((element) => plainName(element) === "style");
	const rules = sheets.flatMap(({ text }) => [...text.matchAll(/([^{}]+)\{([^{}]*)\}/g)]);
	return new Set(
		rules
			.filter(([, , body = ""]) => isHidden({ style: body }))
			.flatMap(([, selectors = ""]) =>
				selectors.split(",").flatMap((each) => /^\s*\.([\w-]+)\s*$/.exec(each)?.[1] ?? []),
			),
	);
}

/** What people call a group in their drawing program. */
function labelOf({ attributes }: XmlElement): string | undefined {
	const label = Object.entries(attributes).find(([key]) => key.endsWith(":label"))?.[1];
	return nameOf(label ?? attributes["aria-label"]);
}

const nameOf = (text = ""): string | undefined => (text.trim() === "" ? undefined : text.trim());

const plainName = ({ name }: XmlElement): string => name.replace(/^.*:/, "");

const childrenOf = ({ children }: XmlElement): XmlElement[] =>
	children.filter((child): child is XmlElement => child instanceof XmlElement);

/** Where an element stands in the file, for people. */
function placesIn(text: string): (element: XmlElement) => string {
	let [line, offset] = [1, 0];
	// Elements come in the order of the file.
	return ({ name, start }) => {
		for (; offset < start; offset++) if (text.charCodeAt(offset) === NEW_LINE) line++;
		return `${name} at line ${line}`;
	};
}

const NEW_LINE = 10;

/** mm of the page for each unit, where the page has a size of its own. Source: CSS Values and Units 3, "Absolute lengths". */
const ABSOLUTE: Readonly<Record<string, number>> = { mm: 1, cm: 10, Q: 0.25, in: 25.4, pt: 25.4 / 72, pc: 25.4 / 6 };

function unitOf({ attributes }: XmlElement): FileUnit | null {
	const [, number, unit] = /^\s*([\d.]+(?:e[+-]?\d+)?)\s*(mm|cm|Q|in|pt|pc)\s*$/i.exec(attributes.width ?? "") ?? [];
	const width = Number(number ?? 0) * (ABSOLUTE[unit ?? ""] ?? 0);
	if (!(width > 0)) return null;
	const [, , across, down] = (attributes.viewBox ?? "")
		.trim()
		.split(/[\s,]+/)
		.map(Number);
	if (across === undefined)
		return { mm: 25.4 / 96, source: `the page is ${attributes.width} wide, its units are 1/96 in` };
	if (!(across > 0)) return null;
	// As `preserveAspectRatio` has it unless it says otherwise: the smaller of both.
	const [, tall, tallUnit] = /^\s*([\d.]+)\s*(mm|cm|Q|in|pt|pc)\s*$/i.exec(attributes.height ?? "") ?? [];
	const height = Number(tall ?? 0) * (ABSOLUTE[tallUnit ?? ""] ?? 0);
	const mm = Math.min(width / across, height > 0 && (down ?? 0) > 0 ? height / (down as number) : Infinity);
	return { mm, source: `the page is ${attributes.width} wide for ${across} units` };
}
