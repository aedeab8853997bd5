import { capital } from "../finding/capital.ts";
import { cornerName } from "../finding/names.ts";
import type { CableZone, Fixing, Surface } from "./fixing.ts";

/** How to fix to one kind of surface. Common practice, no source; the system's instructions come first. */
export interface FixingGuidance {
	readonly surface: string;
	readonly pilot: string;
	readonly plug: string;
	readonly screw: string;
}

/** Said wherever guidance is given. */
export const GUIDANCE_GROUND =
	"Common practice, no source. The system's own instructions come first: where they say otherwise, follow them.";

const ZONE_RULE = "BS 7671, regulation 522.6.202, read in secondary sources";

/** Whose figures the zones are, said wherever they are shown. */
export const ZONE_SOURCE = `Figures of Great Britain: ${ZONE_RULE}. Elsewhere other rules hold, and older cables keep to none.`;

/** What to do at every hole in such a zone. */
export const ZONE_ADVICE =
	"Look for cables with a detector all round the hole, switch the circuit off before drilling, and drill no deeper than the fixing needs; in a wall 100 mm thick or less what is on its other side counts too. If in doubt, have a licensed electrician look first.";

const GUIDANCE: Readonly<Record<Surface, FixingGuidance>> = {
	batten: {
		surface: "batten",
		pilot: "pilot of 2 mm through any plaster and into the batten",
		plug: "no plug",
		screw: "wood screw that goes well into the batten and not through it",
	},
	timber: {
		surface: "timber",
		pilot: "pilot of 2 mm into the timber",
		plug: "no plug",
		screw: "wood screw that goes well into the timber and not through it",
	},
	joists: {
		surface: "joists",
		pilot:
			"find each joist, then a pilot of 2 mm into its middle; where none lies behind a hole, fix a batten across the joists first",
		plug: "no plug",
		screw: "wood screw long enough to pass the board and go well into the joist",
	},
	masonry: {
		surface: "masonry",
		pilot: "hole of the width and depth that the plug says, with a masonry bit, deeper than the plaster",
		plug: "plug set in the masonry behind the plaster, never in a joint that crumbles",
		screw: "screw of the size that the plug says",
	},
	concrete: {
		surface: "concrete",
		pilot:
			"hole of the width and depth that the plug says, with a hammer drill; a lintel may hold stressed steel: drill no deeper than its maker allows",
		plug: "plug made for concrete",
		screw: "screw of the size that the plug says",
	},
	plasterboard: {
		surface: "plasterboard",
		pilot: "find the studs or noggings and fix into them where a hole meets one, as into timber",
		plug: "elsewhere a fixing made for that board's thickness and for that load; a plug or screw in board alone does not hold",
		screw: "screw that belongs to that fixing",
	},
	unknown: {
		surface: "not known",
		pilot: "drill a trial hole where a bracket will cover it, and see what comes out and what it goes into",
		plug: "choose the fixing by that, and pull on it before anything hangs there",
		screw: "screw that belongs to that fixing",
	},
};

export const fixingGuidance = (into: Surface): FixingGuidance => GUIDANCE[into];

/** The guidance as one sentence, without its ground. */
export function guidanceSentence(into: Surface): string {
	const { pilot, plug, screw } = GUIDANCE[into];
	return `${capital(pilot)}; ${plug}; ${screw}.`;
}

/** The kinds of surface that a plan's brackets are fixed to, in the order in which they come. */
export const surfacesOf = (fixings: readonly Fixing[]): Surface[] => [...new Set(fixings.map(({ into }) => into))];

/** What to say of a zone beside a hole: "top of the wall", "beside corner 2", "below the switch"; with "perhaps" where it is not sure. */
export const zoneName = (zone: CableZone, walls: number): string =>
	`${zone.sure ? "" : "perhaps "}${placeOf(zone, walls)}`;

function placeOf(zone: CableZone, walls: number): string {
	if (zone.kind === "wall-top") return "top of the wall";
	if (zone.kind === "corner") return `beside ${cornerName(zone.corner, walls)}`;
	if (zone.lies === "in-line") return `above or below the ${zone.accessory}`;
	return zone.lies === "level" ? `level with the ${zone.accessory}` : `${zone.lies} the ${zone.accessory}`;
}

/** What the plan tells of a bay's holes, from the figures of its finding. */
export function zonesSentence(figures: Readonly<Record<string, number | string>>): string {
	const of = (name: string) => Number(figures[name]);
	const where = [
		[of("top"), "near the top of a wall"],
		[of("corner"), "beside a corner"],
		[of("accessory"), "above or below or level with a switch, a socket or a sensor"],
	] as const;
	const places = where.filter(([count]) => count > 0).map(([count, words]) => `${count} ${words}`);
	const sure =
		of("holes") === 0
			? ""
			: `Of ${of("total")} brackets ${of("holes")} go where concealed cables are to be expected: ${places.join(", ")}. `;
	const perhaps = perhapsSentence(of("perhaps"), of("holes"), of("total"), of("unmeasured") > 0);
	return `${sure}${perhaps}Find cables before every hole, and switch them off. Figures of Great Britain: ${ZONE_RULE}.`;
}

function perhapsSentence(perhaps: number, holes: number, total: number, unmeasured: boolean): string {
	if (perhaps === 0) return "";
	const which =
		holes > 0
			? `${perhaps} more perhaps do`
			: `Of ${total} brackets ${perhaps} perhaps go where concealed cables are to be expected`;
	const why = unmeasured
		? " (the ceiling's or the track's height is not known)"
		: " (by less than a bracket's plate, or beside an end of the bay)";
	return `${which}${why}. `;
}
