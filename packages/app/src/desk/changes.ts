import { retaped, type Typed, typedRise, withAngle, withRun } from "@baywright/editor";
import type { Job, Operation } from "@baywright/setout";

type Bay = Job["bays"][number];

/** Sets one field of a bay's track. */
export function setTrack<Key extends keyof Bay["track"]>(bay: number, key: Key, value: Bay["track"][Key]): Operation[] {
	return [{ op: "replace", path: `/bays/${bay}/track/${key}`, value }];
}

/** Gives one corner a radius of its own (mm), or leaves it to be chosen again (null). */
export function setBendRadius(job: Job, bay: number, corner: number, radius: number | null): Operation[] {
	const others = (job.bays[bay] as Bay).track.bends.filter((bend) => bend.corner !== corner);
	const bends = radius === null ? others : [...others, { corner, radius }];
	return setTrack(
		bay,
		"bends",
		bends.sort((a, b) => a.corner - b.corner),
	);
}

/** Sets one field of a wall. */
export function setWall<Key extends keyof Bay["walls"][number]>(
	bay: number,
	wall: number,
	key: Key,
	value: Bay["walls"][number][Key],
): Operation[] {
	return [{ op: "replace", path: `/bays/${bay}/walls/${wall}/${key}`, value }];
}

/** Makes one wall `length` mm long; the corners after it move along it. In a taped bay this is a reading of its run. */
export function setRun(job: Job, bay: number, wall: number, length: number): Operation[] {
	const corners = withRun((job.bays[bay] as Bay).corners, wall, length);
	return [...setCorners(bay, corners), ...retape(job, bay, { kind: "run", wall }, length)];
}

/** Sets the room angle at one corner (degrees); the middle wall lies as it lay. In a taped bay this is a reading of it. */
export function setAngle(job: Job, bay: number, corner: number, angle: number): Operation[] {
	const { corners, walls } = job.bays[bay] as Bay;
	const turned = withAngle(corners, corner, angle, walls);
	return [...setCorners(bay, turned), ...retape(job, bay, { kind: "angle", corner }, angle)];
}

/** Bows one wall by `rise` mm, + away from the room, with what stands on it. In a taped bay this is a reading of its middle. */
export function setRise(job: Job, bay: number, wall: number, rise: number): Operation[] {
	return [{ op: "replace", path: `/bays/${bay}`, value: typedRise(job.bays[bay] as Bay, wall, rise) }];
}

function retape(job: Job, bay: number, typed: Typed, value: number): Operation[] {
	const before = job.bays[bay] as Bay;
	const { readings } = retaped(before, typed, value);
	return readings === before.readings ? [] : [{ op: "replace", path: `/bays/${bay}/readings`, value: readings }];
}

function setCorners(bay: number, corners: readonly (readonly [number, number])[]): Operation[] {
	return [{ op: "replace", path: `/bays/${bay}/corners`, value: corners }];
}
