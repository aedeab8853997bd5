import { type CornerCard, formatAngle } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";

/** One corner as typed. Lengths mm, the room angle in degrees. */
export interface AskedCorner {
	readonly angle: number;
	readonly left: number;
	readonly right: number;
	readonly radius: number;
	/** Brackets as far as this from the corner along both walls; null = not asked. */
	readonly brackets: number | null;
}

/** The corner card for people. */
export function cornerText(asked: AskedCorner, card: CornerCard, lengths: Lengths): string {
	const { angle, left, right, radius } = asked;
	const { fine } = lengths;
	const projection =
		left === right ? `projection ${fine(left)}` : `projection ${fine(left)} left, ${fine(right)} right`;
	const lines = [
		...wrap(
			`${angle < 180 ? "Internal" : "External"} corner of ${formatAngle(angle)}, ${projection}, radius ${fine(radius)} on the centre line`,
		),
		"",
		...table([words("figure"), figures("length"), words("measured")], rowsOf(asked, card, lengths)),
		"",
		...wrap(angle < 180 ? againstRule(card, lengths) : ROUND_EXTERNAL),
	];
	return `${lines.join("\n")}\n`;
}

function rowsOf({ left, right, brackets }: AskedCorner, card: CornerCard, { fine, whole }: Lengths): string[][] {
	const { setBack, sweep, cornerGap, betweenBrackets } = card;
	const start = "from the corner to where the bend starts";
	const setBacks =
		left === right
			? [["set-back", fine(setBack[0]), `along both wall faces, ${start}`]]
			: [
					["set-back left", fine(setBack[0]), `along the left wall face, ${start}`],
					["set-back right", fine(setBack[1]), `along the right wall face, ${start}`],
				];
	const rows = [
		...setBacks,
		["sweep", fine(sweep), "along the bend"],
		["corner gap", fine(cornerGap), "from the corner to the middle of the bend"],
	];
	if (brackets === null) return rows;
	const far = `brackets ${whole(brackets)} from the corner on both walls`;
	const between =
		betweenBrackets === null
			? ["between brackets", "none", `${far} would stand on the bend`]
			: ["between brackets", fine(betweenBrackets), `along the track, ${far}`];
	return [...rows, between];
}

/** What the closed form leaves to whoever stands at the corner. */
const ROUND_EXTERNAL =
	"A bend round an external corner comes nearer to it as it widens: check the corner gap against the clearance that the system's instructions want. A set-back below 0 lies beyond the corner.";

/** Under this much (mm) a rule of thumb is as good as a plan. */
const AGREES = 1;

/** What the usual rule would make of this corner. */
function againstRule({ rule, overRule }: CornerCard, { fine, whole }: Lengths): string {
	const said = `The usual right-angle rule (common practice) is ${whole(rule.between)} of track between brackets ${whole(rule.brackets)} from the corner`;
	if (overRule === null) return `${said}; here a bracket there would stand on the bend, so it does not apply.`;
	const needed = `; this corner needs ${fine(rule.between + overRule)}`;
	if (Math.abs(overRule) < AGREES) return `${said}${needed}: it fits.`;
	return `${said}${needed}, so the rule is ${fine(Math.abs(overRule))} too ${overRule > 0 ? "short" : "long"}.`;
}
