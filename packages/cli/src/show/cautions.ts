import { CAUTIONS } from "@baywright/setout";
import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

export const cautionsText = (): string[] =>
	section(
		"Cautions",
		CAUTIONS.flatMap(({ text }) => {
			const [first = "", ...rest] = wrap(text, { indent: "    " });
			return [`  - ${first.trimStart()}`, ...rest];
		}),
	);
