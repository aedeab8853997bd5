import { canRemoveBay, duplicateBay, removeBay, type ToolName } from "@baywright/editor";
import type { LengthUnit } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { STAGES, screen, setStage, setTheme } from "../desk/screen.ts";
import { putOnTable } from "../desk/start-taping.ts";
import { toolbox } from "../desk/toolbox.ts";
import { STAGE_WORDS } from "../shell/stage-words.ts";
import { openJobFile, pickDrawing, saveJobFile } from "../storage/job-file.ts";
import { always, type Command, type Now, onDesk } from "./command.ts";

/** Back and forward. */
export const historyCommands: readonly Command[] = [
	{
		id: "undo",
		words: "Undo",
		key: "Ctrl+Z",
		can: ({ desk: { past } }) => (past.length === 0 ? "Nothing has been done yet." : null),
		run: () => {
			const step = desk.getState().past.at(-1);
			desk.getState().undo();
			if (step) screen.getState().say(`Undone: ${step.label}`);
		},
	},
	{
		id: "redo",
		words: "Redo",
		key: "Ctrl+Shift+Z",
		can: ({ desk: { future } }) => (future.length === 0 ? "Nothing has been undone." : null),
		run: () => {
			const step = desk.getState().future.at(-1);
			desk.getState().redo();
			if (step) screen.getState().say(`Redone: ${step.label}`);
		},
	},
];

/** The job as a whole, and its bays. */
export const jobCommands: readonly Command[] = [
	{ id: "new-bay", words: "New bay", also: "add another window", can: onDesk, run: show("new-bay") },
	{ id: "bays", words: "Bays of the job", also: "name rename switch", can: onDesk, run: show("bays") },
	{
		id: "duplicate-bay",
		words: "Duplicate this bay",
		also: "copy another",
		can: onDesk,
		run: ({ desk: { job, bay } }) => putOnTable(duplicateBay(job, bay), "duplicate the bay"),
	},
	{
		id: "remove-bay",
		words: "Remove this bay",
		also: "delete",
		can: (now) => onDesk(now) ?? (canRemoveBay(now.desk.job) ? null : "A job keeps at least one bay."),
		run: ({ desk: { job, bay } }) =>
			putOnTable({ job: removeBay(job, bay), bay: Math.max(0, Math.min(bay, job.bays.length - 2)) }, "remove the bay"),
	},
	{ id: "open", words: "Open a job file", also: "load", key: "Ctrl+O", can: always, run: () => void openJobFile() },
	{
		id: "from-drawing",
		words: "Take walls from a drawing",
		also: "import dxf svg plan file new bay",
		can: always,
		run: () => void pickDrawing(),
	},
	{
		id: "save",
		words: "Save the job file",
		also: "download store",
		key: "Ctrl+S",
		can: onDesk,
		run: () => void saveJobFile(),
	},
	{ id: "examples", words: "Examples", also: "gallery start new job plain", can: always, run: show("examples") },
	{
		id: "corner-card",
		words: "Corner card",
		also: "one odd corner angle radius",
		can: always,
		run: show("corner-card"),
	},
	{
		id: "simulate",
		words: "How often would it fit?",
		also: "simulate first fit rate sure measuring errors",
		can: onDesk,
		run: show("simulate"),
	},
	{ id: "systems", words: "Track systems", also: "change compare", can: onDesk, run: show("systems") },
];

const TOOLS: readonly (readonly [tool: ToolName, words: string, also: string])[] = [
	["select", "Choose and drag", "select pick move arrow"],
	["walls", "Draw walls", "tape run angle"],
	["corner", "Put in corners", "insert split"],
	["opening", "Put in openings", "window door"],
	["obstacle", "Put in obstacles", "socket switch radiator pipe"],
	["no-drill", "Mark stretches without holes", "cable drill"],
	["tape", "Tape between any two places", "measure distance"],
];

/** What is taken in hand on the plan. */
export const toolCommands: readonly Command[] = TOOLS.map(([tool, words, also]) => ({
	id: `tool-${tool}`,
	words,
	also,
	can: onDesk,
	run: () => toolbox.getState().take(tool),
}));

/** What is seen, and how. */
export const pageCommands: readonly Command[] = [
	{
		id: "fit",
		words: "Fit the plan",
		also: "zoom all whole",
		key: "0 on the plan",
		can: onDesk,
		run: () => pressFit(),
	},
	...STAGES.map(
		(stage): Command => ({
			id: `stage-${stage}`,
			words: `Go to ${STAGE_WORDS[stage]}`,
			also: "stage",
			can: (now) => onDesk(now) ?? (now.screen.stage === stage ? "It is at hand already." : null),
			run: () => setStage(stage),
		}),
	),
	...(["mm", "cm", "in"] as const).map(unitCommand),
	...(["light", "dark", "system"] as const).map(
		(theme): Command => ({
			id: `paper-${theme}`,
			words: `Paper: ${theme === "system" ? "as the system" : theme}`,
			also: "theme colours night",
			can: (now) => (now.screen.theme === theme ? "It is so already." : null),
			run: () => setTheme(theme),
		}),
	),
	{
		id: "findings",
		words: "What the plan may tell",
		also: "help findings warnings refusals",
		can: always,
		run: show("findings-help"),
	},
	{ id: "keys", words: "Keys", also: "help keyboard shortcuts", key: "?", can: always, run: show("keys") },
];

function unitCommand(unit: LengthUnit): Command {
	return {
		id: `unit-${unit}`,
		words: `Lengths in ${unit === "in" ? "inches" : unit}`,
		also: "unit measure",
		can: (now) => onDesk(now) ?? (now.desk.job.display.length === unit ? "They are so already." : null),
		run: () => desk.getState().change(`lengths in ${unit}`, [{ op: "replace", path: "/display/length", value: unit }]),
	};
}

type Plain = "new-bay" | "bays" | "examples" | "systems" | "findings-help" | "keys" | "corner-card" | "simulate";

function show(kind: Plain): (now: Now) => void {
	return () => screen.getState().show(kind === "corner-card" ? { kind, corner: null } : { kind });
}

/** The plan owns its view: its own button is pressed. */
function pressFit(): void {
	for (const button of document.querySelectorAll<HTMLElement>("[data-plan] button"))
		if (button.textContent === "Fit") button.click();
}
