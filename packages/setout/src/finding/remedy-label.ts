import { formatLength } from "../job/length-text.ts";
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
			return "Run to the end of the bay";
		case "set-wall-projection":
			return `Projection ${length("projection")} on the ${wall}`;
		case "set-projection":
			return `Projection ${length("projection")}`;
		case "set-rise":
			return `Rise ${length("rise")} on the ${wall}`;
		case "end-at-corner":
			return `End the track at ${corner}`;
		case "follow-smoothest":
			return "Take the smoothest line";
		case "set-radius":
			return `Radius ${length("radius")} at ${corner}`;
		case "release-radius":
			return `Fit the radius at ${corner}`;
		case "release-all-radii":
			return "Fit all radii";
		case "use-system":
			return `Use ${figures.system}`;
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
	}
}
