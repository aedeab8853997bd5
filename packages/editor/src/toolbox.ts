import type { Obstacle } from "@baywright/setout";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Desk } from "./desk.ts";
import type { Held } from "./grips/grip.ts";
import { cornerTool } from "./tools/corner.ts";
import { obstacleTool } from "./tools/obstacle.ts";
import { selectTool } from "./tools/select.ts";
import { noDrillTool, openingTool } from "./tools/stretch.ts";
import { tapeTool } from "./tools/tape.ts";
import type { Answer, Entry, Sketch, Tool, ToolEvent, ToolName, World } from "./tools/tool.ts";
import { wallsTool } from "./tools/walls.ts";

/** Which tool is in hand and what it shows. */
export interface Toolbox {
	readonly tool: ToolName;
	/** What the obstacle tool puts on walls. */
	readonly obstacle: Obstacle["kind"];
	readonly sketch: Sketch | null;
	readonly entry: Entry | null;
	/** What a drag holds. */
	readonly held: Held | null;
	/** A drag takes hold of whatever it starts on, empty sheet too. */
	readonly dragsAnywhere: boolean;
	/** True from a grab until it is dropped or cancelled. */
	readonly busy: boolean;
	/** What the tool last had to say; "" for nothing. */
	readonly said: string;
	take(tool: ToolName, obstacle?: Obstacle["kind"]): void;
	/** Gives the tool in hand an event. False where it was not for this tool. */
	send(event: ToolEvent): boolean;
}

/** The tools, working on a desk. */
export function createToolbox(desk: StoreApi<Desk>): StoreApi<Toolbox> {
	return createStore<Toolbox>()((set, get) => {
		let machine = machineOf("select", "socket");
		let state: unknown = machine.start;
		/** While what changes on the desk is the tool's own doing. */
		let atWork = false;

		/** Null while there is no bay to work on. */
		function world(): World | null {
			const { job, bay, plans, selection } = desk.getState();
			const plan = plans[bay];
			return plan === undefined ? null : { job, bay, plan, selection };
		}

		function shown(): Pick<Toolbox, "sketch" | "entry" | "held" | "dragsAnywhere"> {
			const now = world();
			return {
				sketch: (now && machine.sketch?.(state, now)) ?? null,
				entry: (now && machine.entry?.(state, now)) ?? null,
				held: heldIn(state),
				dragsAnywhere: machine.dragsAnywhere,
			};
		}

		function switchTo(tool: ToolName, obstacle: Obstacle["kind"]): void {
			machine = machineOf(tool, obstacle);
			state = machine.start;
			set({ tool, obstacle, busy: false, said: "", ...shown() });
		}

		/** What was drawn is ended as Escape ends it: first what is typed goes, then the tool. */
		function finishDrawing(): void {
			get().send({ type: "cancel" });
			if (get().entry !== null) get().send({ type: "cancel" });
		}

		/** The bay has changed under the tool (undo, a remedy, another bay): what it was about no longer holds. */
		function startAnew(): void {
			const dragged = get().busy;
			state = machine.start;
			if (dragged) work(() => desk.getState().cancel());
			set({ busy: false, ...shown() });
		}

		function work(change: () => void): void {
			atWork = true;
			try {
				change();
			} finally {
				atWork = false;
			}
		}

		desk.subscribe((now, before) => {
			if (!atWork && (now.job !== before.job || now.bay !== before.bay)) startAnew();
		});

		function follow(answer: Answer<unknown>): void {
			state = answer.state;
			const { preview, commit, rollBack, undo, select, tool } = answer;
			if (preview !== undefined) desk.getState().preview(preview);
			if (rollBack) desk.getState().cancel();
			if (undo) desk.getState().undo();
			if (commit !== undefined) desk.getState().commit(commit.label, commit.job);
			if (select !== undefined) desk.getState().select(select);
			if (tool !== undefined && tool !== get().tool) switchTo(tool, get().obstacle);
		}

		return {
			tool: "select",
			obstacle: "socket",
			sketch: null,
			entry: null,
			held: null,
			dragsAnywhere: false,
			busy: false,
			said: "",
			take(tool, obstacle = get().obstacle) {
				if (get().busy) get().send({ type: "cancel" });
				if (tool !== get().tool && get().entry !== null) finishDrawing();
				switchTo(tool, obstacle);
			},
			send(event) {
				const now = world();
				if (now === null) return false;
				const answer = machine.on(state, event, now);
				work(() => follow(answer));
				const taken = answer.taken !== false;
				const busy =
					event.type === "grab" ? taken : event.type === "drop" || event.type === "cancel" ? false : get().busy;
				set({ ...shown(), busy, said: answer.say ?? (answer.commit || answer.tool ? "" : get().said) });
				return taken;
			},
		};
	});
}

/** A tool as the toolbox sees it: its state is its own affair. */
function machineOf(tool: ToolName, obstacle: Obstacle["kind"]): Tool<unknown> {
	const tools = {
		select: selectTool,
		walls: wallsTool,
		corner: cornerTool,
		opening: openingTool,
		obstacle: obstacleTool(obstacle),
		"no-drill": noDrillTool,
		tape: tapeTool,
	} as const;
	return tools[tool] as Tool<unknown>;
}

const heldIn = (state: unknown): Held | null =>
	typeof state === "object" && state !== null && "held" in state ? (state.held as Held) : null;
