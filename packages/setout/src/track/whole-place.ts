import { type FittedTrack, stationSquareOff, tapedFrom, type WallPlace } from "@baywright/geometry";
import { type Interval, nearestAllowed } from "./intervals.ts";

/** Slack (mm) when a station is compared with the edge of an allowed stretch. */
const SLACK = 1e-6;

/** Is the station in the room, its edges included? */
export const isInRoom = (room: readonly Interval[], station: number): boolean =>
	nearestAllowed(room, station, station - SLACK, station + SLACK) !== null;

/** A station of the room as a place to tape, in whole mm where one close by is still in the room. */
export function wholePlace(track: FittedTrack, room: readonly Interval[], station: number): WallPlace {
	const { wall, at } = tapedFrom(track, station);
	const whole = [Math.round(at), Math.floor(at), Math.ceil(at)].find((taped) => {
		const there = stationSquareOff(track, wall, taped);
		return there !== null && isInRoom(room, there);
	});
	return { wall, at: whole ?? at };
}
