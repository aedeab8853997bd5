import { type Point, pointOffFace, type WallChain } from "@baywright/geometry";
import { type BayPlan, type Bracket, type CornerSetOut, capital, cornerName } from "@baywright/setout";
import type { LabelWish } from "../paper/labels.ts";
import type { PaperPoint } from "../paper/place.ts";
import type { BentStretch } from "./bent-stretches.ts";
import { acrossTrack } from "./plan-lines.ts";
import type { SheetOf } from "./sheet-of.ts";

/** Marks of a bend reach this far over the track's edges, mm. */
export const OVER = 7;

export const cornerLabels = (
	{ plan, angle }: SheetOf,
	corners: readonly CornerSetOut[],
	put: (p: Point) => PaperPoint,
): LabelWish[] =>
	corners.map(({ corner, interiorAngle }) => ({
		anchor: put((plan.chain as WallChain).corners[corner] as Point),
		lines: [capital(cornerName(corner, plan.projections.length)), angle(interiorAngle)],
	}));

export function bendLabels(
	{ plan, figure }: SheetOf,
	{ bends, from, to }: BentStretch,
	put: (p: Point) => PaperPoint,
): LabelWish[] {
	const track = plan.path as NonNullable<BayPlan["path"]>;
	const walls = plan.projections.length;
	const reach = plan.system.profile.width / 2 + OVER;
	return bends.flatMap((bent) => {
		const start = Math.max(bent.start, from);
		const end = Math.min(bent.start + bent.length, to);
		// On the inside of the bend, where there is most room for words and least else.
		const anchor = (station: number) => put(acrossTrack(track, station, reach, reach)[bent.turn > 0 ? 1 : 0]);
		const sets = bent.kind === "bow" ? [] : plan.corners.filter(({ corner }) => bent.corners.includes(corner));
		const setBack = (side: 0 | 1) => {
			const set = side === 0 ? sets[0] : sets.at(-1);
			const mm = set?.setBack[side];
			if (set === undefined || mm === null || mm === undefined) return [];
			return [
				sets.length > 1 ? `set-back ${figure(mm)} from ${cornerName(set.corner, walls)}` : `set-back ${figure(mm)}`,
			];
		};
		const what = bent.kind === "bow" ? "bow" : "bend";
		const gap = sets.length === 1 && sets[0] !== undefined ? [`corner gap ${figure(sets[0].cornerGap)}`] : [];
		const along = acrossTrack(track, start + (end - start) / 4, 0, 0)[0];
		return [
			{ anchor: anchor(start), lines: [`${capital(what)} starts`, ...setBack(0)], layer: "TEXT" as const },
			{ anchor: put(along), lines: [`R ${figure(bent.radius)}`, `sweep ${figure(end - start)}`] },
			{ anchor: anchor((start + end) / 2), lines: [`Middle of ${what}`, ...gap] },
			{ anchor: anchor(end), lines: [`${capital(what)} ends`, ...setBack(1)] },
		];
	});
}

export function bracketLabel(
	{ plan, figure }: SheetOf,
	bracket: Bracket,
	i: number,
	put: (p: Point) => PaperPoint,
): LabelWish {
	const { wall, fromLeftCorner, fromRightCorner } = bracket;
	const face = pointOffFace(plan.chain as WallChain, wall, fromLeftCorner, 0);
	const place = { x: (face.x + bracket.at.x) / 2, y: (face.y + bracket.at.y) / 2 };
	return {
		anchor: put(place),
		lines: [`Bracket ${i + 1}`, `${figure(Math.min(fromLeftCorner, fromRightCorner))} from the corner`],
		layer: "BRACKETS",
	};
}

export function endLabels(
	{ plan }: SheetOf,
	{ leadFrom, leadTo }: BentStretch,
	put: (p: Point) => PaperPoint,
): LabelWish[] {
	const track = plan.path as NonNullable<BayPlan["path"]>;
	return [
		{
			anchor: put(acrossTrack(track, leadFrom, 0, 0)[0]),
			lines: [leadFrom === 0 ? "Left end of the track" : "To the left end"],
		},
		{
			anchor: put(acrossTrack(track, leadTo, 0, 0)[0]),
			lines: [leadTo === track.length ? "Right end of the track" : "To the right end"],
		},
	];
}
