import { degrees, toRadians } from "@baywright/geometry";
import { cornerCard, type LengthUnit, parseDegrees, parseLength, ROOM_ANGLE } from "@baywright/setout";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { type ExitStatus, PLANNED } from "../exit-status.ts";
import { type Options, readOptions } from "../options.ts";
import { type AskedCorner, cornerText } from "../show/corner-card.ts";
import { lengthsIn } from "../show/lengths.ts";
import { plain, quoted } from "../text/plain.ts";
import type { World } from "../world.ts";

const OPTIONS = {
	angle: { example: "135" },
	projection: { example: "40" },
	left: { example: "40" },
	right: { example: "60" },
	radius: { example: "310" },
	brackets: { example: "350" },
	unit: { example: "mm" },
	json: "alone",
} as const;

type Name = keyof typeof OPTIONS;

export const corner: Command = {
	name: "corner",
	usage: "corner --angle 135 --projection 40 --radius 310 [--brackets 350] [--json]",
	summary: "one odd corner: set-back, sweep and the track between brackets",
	about:
		"Sets out one corner without a job file. Lengths may be typed as 40, 4 cm, 0.04 m or 1 9/16 in; a bare " +
		"number is in --unit.",
	options: [
		["--angle DEGREES", "room angle between the two walls: 20 to 177, or 183 to 340 round an external corner"],
		["--projection LENGTH", "wall face to the track's centre line"],
		["--left, --right LENGTH", "projection on one wall, where it is not the same on both"],
		["--radius LENGTH", "bend radius on the centre line"],
		["--brackets LENGTH", "brackets this far from the corner along both walls: also gives the track between them"],
		["--unit mm|cm|in", "unit of bare numbers and of what is shown; mm when left out"],
		["--json", "the figures as data, in mm and degrees, unrounded"],
	],
	example: "corner --angle 135 --projection 40 --radius 310 --brackets 350",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, OPTIONS);
	if (!options.ok) return complain(world, `corner: ${options.message}`);
	const asked = readCorner(options);
	if (typeof asked === "string") return complain(world, `corner: ${asked}`);
	const { angle, left, right, radius, brackets, unit } = asked;
	const card = cornerCard({
		angle: toRadians(degrees(angle)),
		left,
		right,
		radius,
		brackets: brackets ?? 0,
	});
	if (options.has("json")) {
		const { setBack, sweep, cornerGap, betweenBrackets } = card;
		const asInPlans = { corner: null, interiorAngle: angle, radius, setBack, sweep, cornerGap };
		world.out(`${JSON.stringify(brackets === null ? asInPlans : { ...asInPlans, betweenBrackets })}\n`);
	} else world.out(cornerText(asked, card, lengthsIn(unit)));
	return PLANNED;
}

type Given = Extract<Options<Name>, { readonly ok: true }>;

/** What was asked, or what is wrong with it. */
function readCorner(options: Given): (AskedCorner & { readonly unit: LengthUnit }) | string {
	if (options.operands.length > 0) return `found ${quoted(options.operands[0] ?? "")}, allowed options only`;
	const unit = readUnit(options.value("unit"));
	if (unit === null) return `option --unit: found ${quoted(options.value("unit") ?? "")}, allowed mm, cm, in`;
	const angle = readAngle(options.value("angle"));
	if (typeof angle === "string") return `option --angle: ${angle}`;

	const length = (name: Name) => readLength(name, options.value(name), unit);
	const [projection, left, right, radius, brackets] = [
		length("projection"),
		length("left"),
		length("right"),
		length("radius"),
		length("brackets"),
	];
	for (const read of [projection, left, right, radius, brackets]) if (typeof read === "string") return read;
	const sides = [left ?? projection, right ?? projection];
	if (sides.includes(null)) return "option --projection: found nothing, allowed a value as in --projection 40";
	if (radius === null) return "option --radius: found nothing, allowed a value as in --radius 310";
	return {
		angle,
		left: sides[0] as number,
		right: sides[1] as number,
		radius: radius as number,
		brackets: brackets as number | null,
		unit,
	};
}

const readUnit = (text = "mm"): LengthUnit | null =>
	(["mm", "cm", "in"] as const).find((unit) => unit === text) ?? null;

/** Degrees of the room angle, or what is wrong with them. */
function readAngle(text: string | undefined): number | string {
	if (text === undefined) return "found nothing, allowed a value as in --angle 135";
	const found = `found ${quoted(text)}, allowed degrees from 20 to 177, or from 183 to 340 round an external corner`;
	const angle = parseDegrees(text);
	if (angle === null || angle < 0) return `${found}, as in 135 or 92.5`;
	if (angle > 177 && angle < 183) return `${found}: nearer to straight than that a track springs and nothing is bent`;
	return angle >= ROOM_ANGLE.least && angle <= ROOM_ANGLE.greatest ? angle : found;
}

/** A length over 0 in mm, null where none was typed, or what is wrong with it. */
function readLength(name: Name, text: string | undefined, unit: LengthUnit): number | null | string {
	if (text === undefined) return null;
	const parsed = parseLength(text, unit);
	if (!parsed.ok) return plain(`option --${name}: ${parsed.message}`);
	return parsed.value > 0 ? parsed.value : `option --${name}: found ${quoted(text)}, allowed a length over 0`;
}
