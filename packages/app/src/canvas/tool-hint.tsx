import type { ToolName } from "@baywright/editor";
import { useEffect } from "react";
import { useToolbox } from "../desk/toolbox.ts";

/** ms that a word about what was not done stays. */
const TOLD_MS = 6000;

interface Props {
	/** Why something was not done; "" for nothing. */
	readonly told: string;
	readonly forget: () => void;
}

/** What the tool in hand waits for, or why something was not done. The walls tool says it beside its fields. */
export function ToolHint({ told, forget }: Props) {
	const tool = useToolbox((state) => state.tool);
	const said = useToolbox((state) => state.said);
	useEffect(() => {
		if (told === "") return;
		const timer = setTimeout(forget, TOLD_MS);
		return () => clearTimeout(timer);
	}, [told, forget]);
	const text = told || said || HINTS[tool];
	return text === "" || tool === "walls" ? null : (
		<p className="tool-hint" data-told={told !== "" || said !== "" || undefined} role="status">
			{text}
		</p>
	);
}

const HINTS: Readonly<Record<ToolName, string>> = {
	select: "",
	walls: "",
	corner: "Tap a wall to put a corner into it, or pull one out of it.",
	opening: "Draw along a wall from one side of the window to the other; a tap puts a usual one.",
	obstacle: "Tap where it is on the wall.",
	"no-drill": "Draw along the stretch of wall that takes no hole.",
	tape: "Tap two places, or draw from one to the other. Escape takes the tapes away.",
};
