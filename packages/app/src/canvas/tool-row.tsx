import { KIND_NAMES, type ToolName } from "@baywright/editor";
import type { Obstacle } from "@baywright/setout";
import { useId } from "react";
import { toolbox, useToolbox } from "../desk/toolbox.ts";
import { TOOL_KEYS } from "./keys.ts";

/** What the pointer does on the plan: one of a few tools, all in sight. */
export function ToolRow({ onTaken }: { readonly onTaken: () => void }) {
	const tool = useToolbox((state) => state.tool);
	const name = useId();
	return (
		<div className="tool-rows" data-own="">
			<div className="tool-row" role="radiogroup" aria-label="Tools">
				{TOOLS.map(([value, word, does]) => (
					<label key={value} className="tool" title={`${does} (${TOOL_KEYS[value].toUpperCase()})`}>
						<input
							className="hidden"
							type="radio"
							name={name}
							value={value}
							checked={tool === value}
							onChange={() => {
								toolbox.getState().take(value);
								onTaken();
							}}
						/>
						{word}
					</label>
				))}
			</div>
			{tool === "obstacle" ? <ObstacleKind /> : null}
		</div>
	);
}

const TOOLS: readonly (readonly [ToolName, word: string, does: string])[] = [
	["select", "Select", "Choose and move what is there"],
	["walls", "Walls", "Draw walls: tap, or point and type the run"],
	["corner", "Corner", "Put a corner into a wall, or pull one out of it"],
	["opening", "Opening", "Draw an opening along a wall"],
	["obstacle", "Obstacle", "Put an obstacle on a wall"],
	["no-drill", "No holes", "Mark a stretch of wall that takes no hole"],
	["tape", "Tape", "Measure from anything to anything"],
];

const KINDS = Object.entries(KIND_NAMES) as [Obstacle["kind"], string][];

function ObstacleKind() {
	const kind = useToolbox((state) => state.obstacle);
	return (
		<select
			className="tool-kind"
			aria-label="Kind of obstacle"
			value={kind}
			onChange={(event) => toolbox.getState().take("obstacle", event.currentTarget.value as Obstacle["kind"])}
		>
			{KINDS.map(([value, word]) => (
				<option key={value} value={value}>
					{word}
				</option>
			))}
		</select>
	);
}
