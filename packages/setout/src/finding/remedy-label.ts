import { curtainName, HEADING_NAMES } from "../curtains/describe-curtains.ts";
import { formatLength } from "../job/length-text.ts";
import type { Heading } from "../library/heading.ts";
import type { Wording } from "./describe.ts";
import type { Remedy } from "./finding.ts";
import { cornerName, wallName } from "./names.ts";

/** What a remedy's button says. */
export function remedyLabel({ action, figures }: Remedy, { unit, walls }: Wording): string {
	const length = (name: string) => formatLength(Number(figures[name]), unit, { unit: true });
	const corner = cornerName(Number(figures.corner), walls);
	const wall = wallName(Number(figures.wall), walls);
	switch (action) {
		case "track-to-end-of-bay":
			if (figures.end === undefined) return "Run from end to end of the bay";
			return figures.end === "left" ? "Start at the end of the bay" : "Run to the end of the bay";
		case "move-end":
			return `${figures.end === "left" ? "Start" : "End"} at ${length("at")} along the ${wall}`;
		case "swap-ends":
			return "Swap the ends";
		case "set-wall-projection":
			return `Projection ${length("projection")} on the ${wall}`;
		case "set-projection-either-side":
			return `Projection ${length("projection")} either side of ${corner}`;
		case "same-projection":
			return "The same projection on every wall";
		case "set-projection":
			return `Projection ${length("projection")}`;
		case "set-rise":
			return `Rise ${length("rise")} on the ${wall}`;
		case "end-at-corner":
			return `${figures.end === "left" ? "Start" : "End"} the track at ${corner}`;
		case "follow-smoothest":
			return "Take the smoothest line";
		case "draw-to-one-side":
			return "Draw one curtain to the left";
		case "draw-as-pair":
			return "Draw as a pair";
		case "stack-to-side":
			return figures.side === "both"
				? `Part ${curtainName(figures.curtain)} to both sides`
				: `Stack ${curtainName(figures.curtain)} to the ${figures.side}`;
		case "use-heading":
			return `Give ${figures.curtain === undefined ? "the curtains" : curtainName(figures.curtain)} a ${HEADING_NAMES[figures.heading as Heading]} heading`;
		case "lengthen-track":
			return `Lengthen the track by ${length("by")} at its ${figures.end} end`;
		case "meet-at":
			return `Let them meet at ${length("at")} along the track`;
		case "end-curtain-with-track":
			return `End ${curtainName(figures.curtain)} with the track`;
		case "remove-curtain":
			return `Remove ${curtainName(figures.curtain)}`;
		case "follow-walls":
			return "Follow the walls";
		case "set-radius":
			return `Radius ${length("radius")} at ${corner}`;
		case "release-radius":
			return `Fit the radius at ${corner}`;
		case "release-two-radii":
			return `Fit the radii at ${corner} and ${cornerName(Number(figures.other), walls)}`;
		case "release-all-radii":
			return "Fit all radii";
		case "use-system":
			return figures.projection === undefined
				? `Use ${figures.system}`
				: `Use ${figures.system}, projection ${length("projection")}`;
		case "joints-auto":
			return "Place joints";
		case "no-joints":
			return "Do without joints";
		case "remove-joint":
			return "Remove this joint";
		case "move-joint":
			return `Move to ${length("at")} along the ${wall}`;
		case "move-bracket":
			return `Move to ${length("at")} along the ${wall}`;
		case "release-bracket":
			return "Release this bracket";
		case "pin-brackets": {
			const { count, lastWall } = figures;
			if (count === 1) return `Pin a bracket at ${length("at")} along the ${wall}`;
			const [at, to] = count === 2 ? ["at", "and"] : ["from", "to"];
			const first = `${length("at")}${lastWall === figures.wall ? "" : ` along the ${wall}`}`;
			return `Pin ${count} brackets, ${at} ${first} ${to} ${length("last")} along the ${wallName(Number(lastWall), walls)}`;
		}
		case "raise-cord":
			return "Hang the cord as high as advised";
		case "forget-cut":
			return `Forget what was cut as piece ${figures.piece}`;
		case "leave-out-reading":
			return `Leave out the ${figures.name}${figures.other === undefined ? "" : ` and the ${figures.other}`}`;
	}
}
