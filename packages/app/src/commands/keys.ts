/** Keys that do the same thing, and what that is. */
export interface KeyLine {
	readonly keys: readonly string[];
	readonly does: string;
}

export interface KeyGroup {
	readonly title: string;
	readonly lines: readonly KeyLine[];
}

/** Every key there is, by where it holds. */
export const keyGroups: readonly KeyGroup[] = [
	{
		title: "Everywhere",
		lines: [
			{ keys: ["Ctrl+K"], does: "List of commands" },
			{ keys: ["?"], does: "This sheet" },
			{ keys: ["Ctrl+Z"], does: "Undo" },
			{ keys: ["Ctrl+Shift+Z", "Ctrl+Y"], does: "Redo" },
			{ keys: ["Ctrl+S"], does: "Save the job file" },
			{ keys: ["Ctrl+O"], does: "Open a job file" },
			{ keys: ["Escape"], does: "Close what is open, give up a drag, let go" },
		],
	},
	{
		title: "On the plan",
		lines: [
			{
				keys: ["Tab", "Shift+Tab"],
				does: "To the next thing and back: corners, walls, bows, what stands on them, the track",
			},
			{ keys: ["Arrows"], does: "Move what is chosen by 1 mm" },
			{ keys: ["Shift+Arrows"], does: "Move it by 10 mm" },
			{ keys: ["Delete"], does: "Remove what is chosen, or release what was set on it" },
			{ keys: ["+", "−"], does: "Closer and further off" },
			{ keys: ["0"], does: "Fit the bay" },
			{
				keys: ["Ctrl+C", "Ctrl+X", "Ctrl+V"],
				does: "Copy, cut and paste an opening or an obstacle; with nothing chosen copy the bay",
			},
		],
	},
	{
		title: "Drawing walls",
		lines: [
			{ keys: ["0–9"], does: "Type the run" },
			{ keys: ["Tab"], does: "Between run and angle" },
			{ keys: ["Arrows"], does: "Point the wall" },
			{ keys: ["Enter"], does: "Place the wall; with nothing typed, finish" },
			{ keys: ["Backspace"], does: "Take back what was typed, then the last wall" },
		],
	},
	{
		title: "In fields and stages",
		lines: [
			{ keys: ["Enter"], does: "Put what is typed in place" },
			{ keys: ["Escape"], does: "Back to what stood there" },
			{ keys: ["←", "→"], does: "On the row of stages: the stage before and after" },
		],
	},
];
