import {
	AT_95,
	type BayPlan,
	cautionsFor,
	describe,
	formatAngle,
	formatLength,
	type Job,
	type Mark,
	type Piece,
	severityOf,
	wallName,
} from "@baywright/setout";

/** One bay's plan as plain lines, in the order of the work: to print, or to send where no drawing goes. */
export function planText(job: Job, index: number, plans: readonly BayPlan[]): string {
	const bay = job.bays[index];
	const plan = plans[index];
	if (bay === undefined || plan === undefined) return "";
	const unit = job.display.length;
	const show = (mm: number) => formatLength(mm, unit);
	const sure = (mm: number, sd: number | null) => (sd === null ? show(mm) : `${show(mm)} ± ${fine(AT_95 * sd)}`);
	const fine = (mm: number) => formatLength(mm, unit, { precision: 1 });
	const walls = Math.max(0, bay.corners.length - 1);
	const parts = [
		[job.title, job.site, bay.name].filter((word) => word !== "").join(", "),
		`Lengths in ${unit === "in" ? "inches" : unit}. Track: ${plan.system.name}.`,
		...(plan.pieces.length === 0 ? ["DO NOT CUT: the track does not fit as drawn."] : []),
		titled(
			"Look out for",
			plan.findings.map((finding) => findingLine(finding, unit, walls)),
		),
		titled(
			"Brackets, taped along the wall face",
			plan.brackets.map(
				({ wall, fromLeftCorner, fromRightCorner, sd, role }, i) =>
					`${i + 1}  ${wallName(wall, walls)}: ${sure(fromLeftCorner, sd[0])} from its left corner, ${sure(fromRightCorner, sd[1])} from its right (${ROLES[role]})`,
			),
		),
		titled(
			"Corners",
			plan.corners.map(({ corner, interiorAngle, sprung, radius, setBack, sd, sweep, cornerGap }) => {
				const angle = formatAngle((interiorAngle * 180) / Math.PI);
				if (sprung) return `${corner}  ${angle}: springs, no bend`;
				const backs = setBack.map((mm, side) => (mm === null ? "–" : sure(mm, sd[side] ?? null))).join(" and ");
				return `${corner}  ${angle}: radius ${show(radius)}, set-back ${backs}, sweep ${show(sweep)}, gap ${show(cornerGap)}`;
			}),
		),
		...plan.pieces.map((piece) =>
			titled(
				pieceTitle(piece, show),
				piece.marks.map((mark) => markLine(mark, show)),
			),
		),
		titled("Buy", [
			...plan.stock.buy.map(({ length, count }) => `${count} × ${show(length)}`),
			...plan.stock.cuts.map(
				({ stock, pieces, offcut }) =>
					`from ${show(stock)}: ${pieces.map(({ piece, length }) => `${piece} ${show(length)}`).join(", ")}, offcut ${show(offcut)}`,
			),
		]),
		titled("Before you begin", [
			...cautionsFor(job.region, plan.cords !== null).map(({ text }) => text),
			"Measure again before you cut.",
		]),
	];
	return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

type Show = (mm: number) => string;

const titled = (title: string, lines: readonly string[]): string =>
	lines.length === 0 ? "" : `${title.toUpperCase()}\n${lines.join("\n")}`;

function findingLine(finding: BayPlan["findings"][number], unit: Job["display"]["length"], walls: number): string {
	const { title, message } = describe(finding, { unit, walls });
	return `${SEVERITIES[severityOf(finding.code)]}: ${title}. ${message}`;
}

const pieceTitle = ({ name, cutLength, finishedLength }: Piece, show: Show): string =>
	`Piece ${name}: cut ${show(cutLength)} (finished ${show(finishedLength)}), marks from its own cut ends`;

const markLine = ({ kind, of, bow, fromLeft, fromRight }: Mark, show: Show): string =>
	`${show(fromLeft)} from the left, ${show(fromRight)} from the right: ${markName(kind, of, bow)}`;

function markName(kind: Mark["kind"], of: number, bow: boolean): string {
	if (kind === "bracket") return `bracket ${of + 1}`;
	if (kind === "joint") return `joint ${of + 1}`;
	const where = bow ? `the bow of wall ${of + 1}` : `the bend at corner ${of}`;
	return kind === "bend-middle" ? `middle of ${where}` : `${where} ${kind === "bend-start" ? "starts" : "ends"}`;
}

const SEVERITIES = { refusal: "Refused", warning: "Warning", note: "Note" } as const;

const ROLES = {
	end: "at the end",
	bend: "beside a bend",
	joint: "at a joint",
	companion: "beside a joint",
	field: "between",
	pinned: "pinned",
} as const;
