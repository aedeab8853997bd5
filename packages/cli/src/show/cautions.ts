import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

/** General, for any country; the figures of each are for its own rules to say. */
const CAUTIONS: readonly string[] = [
	"The track system's own instructions, local codes and licensed trades come first: where they differ from this plan, follow them.",
	"Find cables and pipes before drilling, around every switch and socket above all.",
	"Cords can strangle small children: keep every cord taut or out of reach with the safety device supplied.",
	"Cut ends are sharp: protect your eyes when sawing and drilling, deburr every cut.",
];

export const cautionsText = (): string[] =>
	section(
		"Cautions",
		CAUTIONS.flatMap((caution) => {
			const [first = "", ...rest] = wrap(caution, { indent: "    " });
			return [`  - ${first.trimStart()}`, ...rest];
		}),
	);
