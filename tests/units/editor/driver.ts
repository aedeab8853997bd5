import {
	createDesk,
	createToolbox,
	type Desk,
	type EntryField,
	nextStop,
	nudged,
	stopsOf,
	type Target,
	type Toolbox,
	type ToolEvent,
	type ToolName,
	type Touch,
} from "@baywright/editor";
import type { Bay, BayPlan, Job, Obstacle } from "@baywright/setout";
import { type Place, underPoint } from "./under-point.ts";

/** mm within which things draw what is moved, unless a script says otherwise. */
const USUAL_REACH = 20;

/** A hand on the drawing table, without a screen: everything in mm of the plan. Every step gives the driver back. */
export interface Driver {
	readonly desk: Desk;
	readonly toolbox: Toolbox;
	readonly bay: Bay;
	readonly plan: BayPlan;
	readonly corners: readonly (readonly [number, number])[];
	/** What the last event came to. */
	readonly taken: boolean;
	/** Is told of every change on the desk. */
	watch(listener: (now: Desk, before: Desk) => void): void;
	take(tool: ToolName, obstacle?: Obstacle["kind"]): Driver;
	/** From now on things draw what is moved within so many mm; 0 = nothing draws. */
	reach(mm: number): Driver;
	hover(x: number, y: number): Driver;
	leave(): Driver;
	tap(x: number, y: number): Driver;
	doubleTap(x: number, y: number): Driver;
	/** Takes hold of a thing, at a place or where it is found by a look at the plan. */
	grab(target: Target | null, from: Place): Driver;
	/** Takes hold of whatever lies there. */
	press(x: number, y: number): Driver;
	drag(to: Place): Driver;
	drop(): Driver;
	/** Signs typed one after the other. */
	type(text: string): Driver;
	entry(field: EntryField, text: string): Driver;
	tab(): Driver;
	enter(): Driver;
	escape(): Driver;
	erase(): Driver;
	/** An arrow key: points while walls are drawn, pushes what is chosen otherwise. */
	key(arrow: "up" | "down" | "left" | "right"): Driver;
	/** Tab from handle to handle. */
	walk(back?: boolean): Driver;
	undo(): Driver;
	redo(): Driver;
	send(event: ToolEvent): Driver;
}

const ARROWS = { up: [0, 1], down: [0, -1], left: [-1, 0], right: [1, 0] } as const;

export function driver(job: Job): Driver {
	const desk = createDesk(job);
	const box = createToolbox(desk);
	let reach = USUAL_REACH;
	let taken = true;

	const bay = () => desk.getState().shown.bays[desk.getState().bay] as Bay;
	const touch = (at: Place, target: Target | null): Touch => ({ at, target, reach });
	const looked = (x: number, y: number) => touch({ x, y }, underPoint(bay(), { x, y }, USUAL_REACH));
	const send = (event: ToolEvent): Driver => {
		taken = box.getState().send(event);
		return self;
	};

	const self: Driver = {
		get desk() {
			return desk.getState();
		},
		get toolbox() {
			return box.getState();
		},
		get bay() {
			return bay();
		},
		get plan() {
			return desk.getState().plans[desk.getState().bay] as BayPlan;
		},
		get corners() {
			return bay().corners;
		},
		get taken() {
			return taken;
		},
		watch: (listener) => desk.subscribe(listener),
		take(tool, obstacle) {
			box.getState().take(tool, obstacle);
			return self;
		},
		reach(mm) {
			reach = mm;
			return self;
		},
		hover: (x, y) => send({ type: "hover", touch: looked(x, y) }),
		leave: () => send({ type: "hover", touch: null }),
		tap: (x, y) => send({ type: "tap", touch: looked(x, y) }),
		doubleTap: (x, y) => send({ type: "double-tap", touch: looked(x, y) }),
		grab: (target, from) => send({ type: "grab", touch: touch(from, target) }),
		press: (x, y) => send({ type: "grab", touch: looked(x, y) }),
		drag: (to) => send({ type: "drag", touch: touch(to, null) }),
		drop: () => send({ type: "drop" }),
		type(text) {
			for (const sign of text) send({ type: "type", text: sign });
			return self;
		},
		entry: (field, text) => send({ type: "entry", field, text }),
		tab: () => send({ type: "next-field" }),
		enter: () => send({ type: "enter" }),
		escape: () => send({ type: "cancel" }),
		erase: () => send({ type: "erase" }),
		key(arrow) {
			const [dx, dy] = ARROWS[arrow];
			const { selection, job: now, bay: index } = desk.getState();
			if (box.getState().entry !== null) return send({ type: "point", heading: Math.atan2(dy, dx) });
			if (selection === null) return self;
			const held = { target: selection, job: now, bay: index, plan: self.plan, from: placeOf(selection) };
			desk.getState().commit("nudge", nudged(held, dx, dy), `nudge ${selection.kind} ${selection.index}`);
			return self;
		},
		walk(back = false) {
			desk.getState().select(nextStop(stopsOf(bay(), self.plan), desk.getState().selection, back));
			return self;
		},
		undo() {
			desk.getState().undo();
			return self;
		},
		redo() {
			desk.getState().redo();
			return self;
		},
		send,
	};

	/** Somewhere on what is chosen: only a start to push from. */
	function placeOf({ kind, index, wall }: Target): Place {
		const on =
			kind === "opening" ? bay().openings[index]?.wall : kind === "obstacle" ? bay().obstacles[index]?.wall : wall;
		const [x, y] = bay().corners[on ?? Math.min(index, bay().corners.length - 1)] ?? [0, 0];
		return { x, y };
	}

	return self;
}
