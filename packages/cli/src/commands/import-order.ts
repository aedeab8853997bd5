import { builtInSystems, parseLength } from "@baywright/setout";
import type { ImportWish, UnitName } from "@baywright/sheets/read";
import type { Options } from "../options.ts";
import { quoted } from "../text/plain.ts";

export const IMPORT_OPTIONS = {
	layer: { example: "WALLS" },
	unit: { example: "mm" },
	scale: { example: "20" },
	join: { example: "5" },
	chain: { example: "2" },
	walls: { example: "2-4" },
	"other-side": "alone",
	system: { example: "light-corded" },
	title: { example: "Harbour Street" },
	out: { example: "bay.baywright.json" },
	force: "alone",
	look: "alone",
} as const;

/** What to take, and where to put it. */
export interface ImportOrder {
	readonly file: string;
	readonly wish: ImportWish;
	/** Null = one that suits the walls. */
	readonly system: string | null;
	readonly title: string | undefined;
	readonly out: string | undefined;
	readonly force: boolean;
	readonly look: boolean;
}

type Given = Extract<Options<keyof typeof IMPORT_OPTIONS>, { readonly ok: true }>;

const UNIT_NAMES: readonly UnitName[] = ["mm", "cm", "m", "in", "ft"];

/** The order as typed, or what is wrong with it; how far apart ends may be to be joined, mm, comes with the readers. */
export function readImportOrder(options: Given, [least, greatest]: readonly [number, number]): ImportOrder | string {
	const [file, ...more] = options.operands;
	if (file === undefined || file === "" || more.length > 0)
		return `found ${options.operands.length} names, allowed one: a DXF, an SVG, or - for standard input`;
	const typed = options.value("unit");
	const unit = UNIT_NAMES.find((name) => name === typed?.toLowerCase());
	if (typed !== undefined && unit === undefined)
		return `option --unit: found ${quoted(typed)}, allowed ${UNIT_NAMES.join(", ")}`;
	const scale = options.value("scale");
	const parts = scale === undefined ? undefined : Number(scale.replace(/^1\s*:\s*/, ""));
	if (parts !== undefined && !(parts >= 0.01 && parts <= 10_000))
		return `option --scale: found ${quoted(scale ?? "")}, allowed 0.01 to 10000, as 20 for 1 : 20`;
	const join = options.value("join");
	const reach = join === undefined ? undefined : parseLength(join, "mm");
	if (reach !== undefined && !(reach.ok && reach.value >= least && reach.value <= greatest))
		return `option --join: found ${quoted(join ?? "")}, allowed ${least} to ${greatest} mm`;
	const chain = options.value("chain");
	if (chain !== undefined && !/^[1-9]\d{0,5}$/.test(chain))
		return `option --chain: found ${quoted(chain)}, allowed 1, 2, 3 …`;
	const walls = options.value("walls");
	const [, first, last = first] = /^([1-9]\d{0,5})(?:-([1-9]\d{0,5}))?$/.exec(walls ?? "") ?? [];
	if (walls !== undefined && first === undefined)
		return `option --walls: found ${quoted(walls)}, allowed the first and the last wall as in 2-4`;
	const system = options.value("system") ?? null;
	const ids = builtInSystems.map(({ id }) => id);
	if (system !== null && !ids.includes(system))
		return `option --system: found ${quoted(system)}, allowed ${ids.join(", ")}`;
	const out = options.value("out");
	if (out === "") return "option --out: found nothing, allowed a file as in --out bay.baywright.json";
	return {
		file,
		wish: {
			layer: options.value("layer"),
			unit,
			scale: parts,
			reach: reach?.ok ? reach.value : undefined,
			chain: chain === undefined ? undefined : Number(chain) - 1,
			walls: first === undefined ? undefined : [Number(first) - 1, Number(last) - 1],
			otherSide: options.has("other-side"),
		},
		system,
		title: options.value("title"),
		out,
		force: options.has("force"),
		look: options.has("look"),
	};
}
