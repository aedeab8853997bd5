import { type ScreenPoint, type Selection, type Stretch, stretchOf, wayOut } from "@baywright/editor";
import { type Bay, cornerName, formatAngle, formatLength, wallName } from "@baywright/setout";
import { heldBy } from "./holding.ts";
import { roomAngle } from "./labels/figures.ts";
import type { Subject } from "./scene.ts";

export interface Reading {
	readonly name: string;
	readonly figure: string;
}

/** The figures that change while something is held or nudged: of itself and of what is beside it. `before`: the bay as it was. */
export function heldReadings(held: Selection, before: Bay | null, subject: Subject): Reading[] {
	const { bay, plan, unit } = subject;
	const length = (name: string, mm: number): Reading => ({ name, figure: formatLength(mm, unit) });
	switch (held.kind) {
		case "corner":
			return [
				...runs([held.index - 1, held.index], subject),
				...anglesAt([held.index], subject, () => "angle"),
				...holding(bay, [held.index]),
			];
		case "wall": {
			const out = before === null ? 0 : movedOut(before, bay, held.index);
			return [
				...(before === null ? [] : [length(out < 0 ? "moved in" : "moved out", Math.abs(out))]),
				...runs([held.index - 1, held.index, held.index + 1], subject),
				...anglesAt([held.index, held.index + 1], subject, (corner) => `angle ${corner}`),
				...holding(bay, [held.index, held.index + 1]),
			];
		}
		case "bow":
			return bowReadings(held.index, subject);
		case "opening":
		case "obstacle":
		case "no-drill": {
			const it = stretchOf(bay, held);
			return it === null ? [] : stretchReadings(it, subject);
		}
		case "track-end": {
			const end = held.index === 0 ? bay.track.start : bay.track.end;
			const track = plan.path === null ? [] : [length("track", plan.path.length)];
			return end === null
				? [{ name: "at the end of the bay", figure: "" }, ...track]
				: [...placeReadings(end, subject), ...track];
		}
		case "bend": {
			const corner = plan.corners.find((it) => it.corner === held.index);
			if (corner === undefined) return [];
			return [
				length("radius", corner.radius),
				length("least", Math.ceil(corner.least)),
				length("greatest", Math.floor(corner.greatest)),
				length("sweep", corner.sweep),
			];
		}
		case "bracket": {
			const it = plan.brackets[held.index];
			return it === undefined ? [] : placeReadings({ wall: it.wall, at: it.fromLeftCorner }, subject);
		}
		case "joint": {
			const it = plan.joints[held.index];
			if (it === undefined) return [];
			const pieces = plan.pieces.map(({ name, cutLength }) => length(`cut ${name}`, cutLength));
			return [...placeReadings(it, subject), ...pieces];
		}
		default:
			return [];
	}
}

/** Away from the room, on screen, where something is held; any length. */
export function heldOut(held: Selection, subject: Subject): ScreenPoint {
	const { kind, index } = held;
	const { walls } = subject;
	const beside =
		kind === "corner" || kind === "bend"
			? [walls[index - 1]?.along.at(-1), walls[index]?.along[0]]
			: [walls[wallOf(held, subject)]?.chord];
	const ux = beside.reduce((sum, it) => sum + (it?.ux ?? 0), 0);
	const uy = beside.reduce((sum, it) => sum + (it?.uy ?? 0), 0);
	return { left: -uy, top: -ux };
}

/** The wall that something stands on; −1 for what is not there. */
function wallOf(held: Selection, { walls, bay, plan }: Subject): number {
	const { kind, index } = held;
	if (kind === "bracket") return plan.brackets[index]?.wall ?? -1;
	if (kind === "joint") return plan.joints[index]?.wall ?? -1;
	if (kind === "track-end")
		return index === 0 ? (bay.track.start?.wall ?? 0) : (bay.track.end?.wall ?? walls.length - 1);
	if (kind === "wall" || kind === "bow") return index;
	return stretchOf(bay, held)?.wall ?? -1;
}

/** Of what holds a taped corner so many are named. */
const MOST_NAMED = 3;

/** What was taped and pulls back, a line each. */
function holding(bay: Bay, corners: readonly number[]): Reading[] {
	const names = heldBy(bay, corners);
	const shown = names.length > MOST_NAMED + 1 ? names.slice(0, MOST_NAMED) : names;
	const more = names.length - shown.length;
	return [...shown, ...(more > 0 ? [`${more} more`] : [])].map((figure, i) => ({
		name: i === 0 ? "held by" : "",
		figure,
	}));
}

function runs(at: readonly number[], { walls, corners, unit }: Subject): Reading[] {
	return at.flatMap((wall) => {
		const shape = walls[wall];
		if (!shape) return [];
		return [{ name: wallName(wall, corners.length - 1), figure: formatLength(shape.chord.length, unit) }];
	});
}

function placeReadings({ wall, at }: { readonly wall: number; readonly at: number }, subject: Subject): Reading[] {
	const { walls, corners, unit } = subject;
	const length = walls[wall]?.length ?? 0;
	const count = corners.length - 1;
	return [
		{ name: `from ${cornerName(wall, count)}`, figure: formatLength(at, unit) },
		{ name: `from ${cornerName(wall + 1, count)}`, figure: formatLength(length - at, unit) },
	];
}

function stretchReadings({ wall, from, to }: Stretch, { walls, corners, unit }: Subject): Reading[] {
	const count = corners.length - 1;
	const length = walls[wall]?.length ?? 0;
	return [
		{ name: `from ${cornerName(wall, count)}`, figure: formatLength(from, unit) },
		{ name: "width", figure: formatLength(to - from, unit) },
		{ name: `from ${cornerName(wall + 1, count)}`, figure: formatLength(length - to, unit) },
	];
}

/** A bow's rise, the radius of its face and of the track along it, and the angles at its ends. */
function bowReadings(wall: number, subject: Subject): Reading[] {
	const { walls, plan, unit } = subject;
	const shape = walls[wall];
	if (!shape) return [];
	const rise = shape.arc?.rise ?? 0;
	const radius = (off: number) =>
		shape.arc === null ? "straight" : formatLength(shape.arc.radius - Math.sign(rise) * off, unit);
	return [
		{ name: rise < 0 ? "rise into the room" : "rise", figure: formatLength(Math.abs(rise), unit) },
		{ name: "radius of the face", figure: radius(0) },
		{ name: "radius of the track", figure: radius(plan.projections[wall] ?? 0) },
		{ name: "along the face", figure: formatLength(shape.length, unit) },
		...anglesAt([wall, wall + 1], subject, (corner) => `angle ${corner}`),
	];
}

function anglesAt(at: readonly number[], { walls }: Subject, name: (corner: number) => string): Reading[] {
	return at.flatMap((corner) => {
		const left = walls[corner - 1]?.along.at(-1);
		const right = walls[corner]?.along[0];
		return left && right ? [{ name: name(corner), figure: formatAngle(roomAngle(left, right)) }] : [];
	});
}

/** How far a wall has gone away from the room since, square to itself, mm. */
function movedOut(before: Bay, after: Bay, wall: number): number {
	const [from, to] = [before.corners[wall], after.corners[wall]];
	return from && to ? wayOut(before, wall, to[0] - from[0], to[1] - from[1]) : 0;
}
