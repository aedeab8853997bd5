import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Cloth } from "../library/cloth.ts";
import type { TrackSystem } from "../library/system.ts";

/** Between which figures something is sensible (common practice, no source). Lengths mm, areal masses g/m². */
const SENSIBLE = {
	stretch: [100, 20_000],
	fullness: [1.2, 4],
	drop: [150, 6000],
	overlap: [0, 400],
	returns: [0, 400],
	ease: [0, 250],
	"side turning": [0, 200],
	"heading turning": [0, 400],
	"hem turning": [0, 500],
	width: [500, 3500],
	repeat: [10, 1500],
	mass: [20, 1500],
	thickness: [0.05, 15],
	"lining width": [500, 3500],
	"lining mass": [20, 1500],
	"lining thickness": [0.05, 15],
	packing: [20, 350],
	"glider spacing": [30, 200],
} as const satisfies Record<string, readonly [least: number, greatest: number]>;

/** Cloth that lies on the floor where a curtain is to be longer than the track is high, mm. */
const ON_THE_FLOOR = 300;

export type SensibleFigure = keyof typeof SENSIBLE;

/** A figure of the job, what it is of, and its field in the file. */
interface Asked {
	readonly what: SensibleFigure;
	readonly value: number | null | undefined;
	readonly field: string;
	readonly where?: Finding["where"];
	/** Name of the cloth or system that has it. */
	readonly of?: string;
	/** Less than the usual greatest: no drop goes far past the floor. */
	readonly most?: number;
	/** 0 says that there is none. */
	readonly noneIsZero?: boolean;
}

/** Each figure of the curtains, their make-up and the cloths in use that nobody would expect. They are worked with as they stand. */
export function unusualFigures(
	bay: Bay,
	cloths: readonly Cloth[],
	system: TrackSystem,
	length: number,
	height: number | null,
): Finding[] {
	const used = new Set(bay.curtains.map(({ cloth }) => cloth));
	const asked = [
		...bay.curtains.flatMap(({ from, to, fullness, drop }, curtain): Asked[] => [
			{
				what: "stretch",
				value: (from ?? 0) < length ? (to ?? length) - (from ?? 0) : null,
				field: `curtains[${curtain}].to`,
				where: { curtain },
			},
			{ what: "fullness", value: fullness, field: `curtains[${curtain}].fullness`, where: { curtain } },
			{
				what: "drop",
				value: drop,
				field: `curtains[${curtain}].drop`,
				where: { curtain },
				...(height === null ? {} : { most: height + ON_THE_FLOOR }),
			},
		]),
		...ofMakeUp(bay.makeUp),
		...cloths.filter(({ id }) => used.has(id)).flatMap(ofCloth),
		...packings(system, system.name, `systems ${system.id}`),
		{
			what: "glider spacing",
			value: system.gliderSpacing,
			field: `systems ${system.id}.gliderSpacing`,
			of: system.name,
		} as const,
	];
	return asked.flatMap(({ what, value, field, where, of, most, noneIsZero }: Asked): Finding[] => {
		const [least, usual] = SENSIBLE[what];
		const greatest = Math.max(least, Math.min(usual, most ?? usual));
		if (value === null || value === undefined || (value >= least && value <= greatest)) return [];
		if (noneIsZero === true && value === 0) return [];
		const named = of === undefined ? {} : { of };
		return [
			{
				code: "unusual-figure",
				where: { ...where, field },
				figures: { what, value, least, greatest, ...named },
				remedies: [],
			},
		];
	});
}

function ofMakeUp(makeUp: Bay["makeUp"]): Asked[] {
	return [
		{ what: "overlap", value: makeUp.overlap, field: "makeUp.overlap" },
		{ what: "returns", value: makeUp.returns, field: "makeUp.returns" },
		{ what: "ease", value: makeUp.ease, field: "makeUp.ease" },
		{ what: "side turning", value: makeUp.sideTurning, field: "makeUp.sideTurning" },
		{ what: "heading turning", value: makeUp.headingTurning, field: "makeUp.headingTurning" },
		{ what: "hem turning", value: makeUp.hemTurning, field: "makeUp.hemTurning" },
	];
}

function ofCloth(cloth: Cloth): Asked[] {
	const of = cloth.name || cloth.id;
	const field = `cloths ${cloth.id}`;
	const { lining } = cloth;
	return [
		{ what: "width", value: cloth.width, field: `${field}.width`, of },
		{ what: "repeat", value: cloth.repeat, field: `${field}.repeat`, of, noneIsZero: true },
		{ what: "mass", value: cloth.mass, field: `${field}.mass`, of },
		{ what: "thickness", value: cloth.thickness, field: `${field}.thickness`, of },
		{ what: "lining width", value: lining?.width, field: `${field}.lining.width`, of },
		{ what: "lining mass", value: lining?.mass, field: `${field}.lining.mass`, of },
		{ what: "lining thickness", value: lining?.thickness, field: `${field}.lining.thickness`, of },
		...packings(cloth, of, field),
	];
}

const packings = ({ packing }: Pick<Cloth, "packing">, of: string, field: string): Asked[] =>
	Object.entries(packing).map(([heading, value]) => ({
		what: "packing",
		value,
		field: `${field}.packing.${heading}`,
		of,
	}));
