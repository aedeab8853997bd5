import { toDegrees, type WallChain } from "@baywright/geometry";
import {
	AT_95,
	type BracketRole,
	cornerName,
	dimensionSureness,
	formatAngle,
	type Piece,
	wallName,
	zoneName,
} from "@baywright/setout";
import { together } from "../lettering/measure.ts";
import type { TableData } from "../paper/table.ts";
import type { SheetOf } from "./sheet-of.ts";
import { markName } from "./strip-marks.ts";

const ROLES: Readonly<Record<BracketRole, string>> = {
	end: "near the end",
	bend: "beside a bend",
	joint: "at a joint",
	companion: "beside a joint",
	field: "between",
	pinned: "pinned",
};

/** Every table of the sheet; those that are only data are drawn on paper. */
export function tablesOf(of: SheetOf): TableData[] {
	const { plan } = of;
	return [
		bracketTable(of),
		...plan.pieces.map((piece) => markTable(of, piece)),
		...(plan.corners.length + plan.bows.length === 0 ? [] : [bendTable(of)]),
		pieceTable(of),
		...(plan.stock.cuts.length === 0 ? [] : [stockTable(of)]),
	];
}

/** The walls as they are drawn; on paper only where the drawing has no room for all their figures, and with brackets round what is not taped. */
export function wallTable({ plan, bay, figure, angle }: SheetOf, isOnPaper = false): TableData {
	const chain = plan.chain as WallChain;
	const walls = chain.walls.length;
	const sure = dimensionSureness(bay, plan.system);
	const shown = (words: string, sd: number | null | undefined) =>
		isOnPaper && (sd ?? null) === null ? `(${words})` : words;
	const isBowed = chain.walls.some(({ bow }) => bow !== null);
	return {
		name: "walls",
		title: "Walls",
		columns: [
			{ heading: "wall", of: "words" },
			{ heading: "run", of: "figures", bold: true },
			...(isBowed ? [{ heading: "rise", of: "figures" } as const] : []),
			{ heading: "ends at", of: "words" },
			{ heading: "room angle there", of: "figures" },
		],
		rows: chain.walls.map(({ length, bow }, wall) => [
			wallName(wall, walls),
			shown(figure(length), sure?.runs[wall]),
			...(isBowed ? [bow === null ? "" : shown(figure(bow.rise), sure?.rises[wall])] : []),
			cornerName(wall + 1, walls),
			wall === walls - 1 ? "" : shown(angle(Math.PI - (chain.turns[wall + 1] as number)), sure?.angles[wall + 1]),
		]),
	};
}

const tick = { heading: "", of: "tick" } as const;

function bracketTable({ plan, figure }: SheetOf): TableData {
	const walls = plan.projections.length;
	const zoneNames = plan.fixings.map((fixing) =>
		fixing.zones.map((zone) => together(zoneName(zone, walls))).join(", "),
	);
	const zones = zoneNames.some((each) => each !== "") ? zoneNames : null;
	return {
		name: "brackets",
		title: "Brackets",
		columns: [
			tick,
			{ heading: "no.", of: "figures", bold: true },
			{ heading: "wall", of: "words" },
			{ heading: "from its\nleft corner", of: "figures", bold: true },
			{ heading: "from its\nright corner", of: "figures", bold: true },
			{ heading: "wall to\ncentre line", of: "figures" },
			{ heading: "what for", of: "words" },
			...(zones !== null ? [{ heading: "cables may lie here", of: "words" } as const] : []),
		],
		rows: plan.brackets.map(({ wall, fromLeftCorner, fromRightCorner, projection, role }, i) => [
			"",
			String(i + 1),
			wallName(wall, walls),
			figure(fromLeftCorner),
			figure(fromRightCorner),
			figure(projection),
			ROLES[role],
			...(zones === null ? [] : [zones[i] ?? ""]),
		]),
		note: `Taped along the wall face from the corner at either end of that wall: both readings give the same place.${plan.bows.length > 0 ? " On a bowed wall the tape follows the curve of the face." : ""}`,
	};
}

/** The marks of a strip as data: on paper they are drawn. */
export const markTable = ({ plan, figure }: SheetOf, { name, marks }: Piece): TableData => ({
	name: `piece-${name.toLowerCase()}`,
	title: `Marks on piece ${name}`,
	columns: [
		{ heading: "mark", of: "words" },
		{ heading: "from left cut end", of: "figures" },
		{ heading: "from right cut end", of: "figures" },
	],
	rows: marks.map((mark) => [together(markName(mark, plan)), figure(mark.fromLeft), figure(mark.fromRight)]),
});

function bendTable({ plan, figure, angle }: SheetOf): TableData {
	const walls = plan.projections.length;
	const corners = plan.corners.map(({ corner, interiorAngle, radius, setBack, sweep, cornerGap, sprung }) => {
		const start = ["", cornerName(corner, walls), angle(interiorAngle)];
		if (sprung || radius === 0) return [...start, "springs", "", "", "", figure(cornerGap)];
		const marks = [radius, ...setBack, sweep, cornerGap].map((mm) => (mm === null ? "–" : figure(mm)));
		return [...start, ...marks];
	});
	const bows = plan.bows.map(({ wall, radius, turn, sweep }) => [
		"",
		`bow, ${wallName(wall, walls)}`,
		`turns ${formatAngle(toDegrees(turn))}`,
		figure(radius),
		"",
		"",
		figure(sweep),
		"",
	]);
	return {
		name: "bends",
		title: "Bends",
		columns: [
			tick,
			{ heading: "where", of: "words" },
			{ heading: "room angle", of: "figures" },
			{ heading: "radius", of: "figures", bold: true },
			{ heading: "set-back\nleft wall", of: "figures" },
			{ heading: "set-back\nright wall", of: "figures" },
			{ heading: "sweep", of: "figures", bold: true },
			{ heading: "corner\ngap", of: "figures" },
		],
		rows: [...corners, ...bows],
		note: "Radius and sweep along the centre line. Set-back: from the corner along the wall face to where the bend starts. Corner gap: from the corner to the middle of the bend.",
	};
}

function pieceTable({ plan, figure, fine }: SheetOf): TableData {
	return {
		name: "pieces",
		title: "Pieces",
		columns: [
			tick,
			{ heading: "piece", of: "words", bold: true },
			{ heading: "cut length", of: "figures", bold: true },
			{ heading: "± (95 %)", of: "figures" },
			{ heading: "finished length", of: "figures" },
			{ heading: "end hardware takes up", of: "figures" },
		],
		rows: plan.pieces.map(({ name, cutLength, finishedLength, sd }) => [
			"",
			name,
			figure(cutLength),
			sd === null ? "not known" : figure(AT_95 * sd),
			figure(finishedLength),
			figure(finishedLength - cutLength),
		]),
		note: `Cut only after the track has been offered up. Each saw cut takes ${fine(plan.system.kerf)}.`,
	};
}

function stockTable({ plan, figure, about }: SheetOf): TableData {
	const buy = plan.stock.buy.map(({ length, count }) => `${count} × ${about(length)}`).join(", ");
	return {
		name: "stock",
		title: `Stock: ${buy}`,
		columns: [
			{ heading: "length", of: "figures" },
			{ heading: "cut from it", of: "words" },
			{ heading: "offcut", of: "figures" },
		],
		rows: plan.stock.cuts.map(({ stock, pieces, offcut }) => [
			about(stock),
			pieces.map(({ piece, length }) => `${piece} ${figure(length)}`).join(" + "),
			figure(offcut),
		]),
	};
}
