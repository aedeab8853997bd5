import type { ToolName } from "@baywright/editor";
import { useToolbox } from "../desk/toolbox.ts";

/** What the tool in hand waits for, or why it did nothing. The walls tool says it beside its fields. */
export function ToolHint() {
	const tool = useToolbox((state) => state.tool);
	const said = useToolbox((state) => state.said);
	const text = said === "" ? HINTS[tool] : said;
	return text === "" || tool === "walls" ? null : (
		<p className="tool-hint" role="status">
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
