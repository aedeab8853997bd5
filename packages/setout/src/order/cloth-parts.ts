import type { CurtainSetOut } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Cloth } from "../library/cloth.ts";
import type { Heading } from "../library/heading.ts";
import { type Counted, curtainPlaces, piece, type ToCount } from "./counted.ts";
import type { PartKind } from "./part.ts";
import { metresUp } from "./spare.ts";

/** Cloth, lining, heading tape and hooks of the curtains that the job names; where it names none, nothing is made. */
export function clothParts(
	{ makeUp }: Bay,
	{ curtains, system }: Pick<ToCount, "curtains" | "system">,
	cloths: readonly Cloth[],
): Counted[] {
	const given = curtains.filter(({ curtain }) => curtain !== null);
	if (given.length === 0) return [];
	const hooks = given.reduce((sum, { gliders }) => sum + gliders, 0);
	return [
		...inGroups(given, ({ cloth }) => cloth ?? "").flatMap(([id, hung]) => ofCloth(id, hung, cloths)),
		...inGroups(given, ({ heading }) => heading).map(([heading, hung]) =>
			tape(heading as Heading, hung, makeUp.sideTurning),
		),
		piece("hook", system.id, hooks, [{ of: "curtains", indexes: curtainPlaces(given) }]),
	];
}

/** Cloth and lining of the curtains of one cloth; those without any are nothing to buy by name, but are not passed over in silence. */
function ofCloth(id: string, hung: readonly CurtainSetOut[], cloths: readonly Cloth[]): Counted[] {
	const cloth = cloths.find((each) => each.id === id);
	const from = [{ of: "curtains", indexes: curtainPlaces(hung) }] as const;
	const line = (kind: PartKind, item: string, metres: readonly (number | null)[], name: string): Counted => {
		const known = metres.filter((each) => each !== null);
		const isKnown = known.length === metres.length;
		return {
			kind,
			item,
			system: null,
			quantity: isKnown ? metresUp(known.reduce((sum, each) => sum + each, 0)) : null,
			unit: "m",
			size: null,
			from,
			figures: { name, ...(isKnown ? {} : { unknown: cloth === undefined ? "no-cloth" : "no-drop" }) },
		};
	};
	if (cloth === undefined) return [line("cloth", "cloth", [null], "")];
	const name = cloth.name || cloth.id;
	const cutting = hung.map((one) => one.cutting);
	const face = line(
		"cloth",
		`cloth ${id}`,
		cutting.map((cut) => cut?.metres ?? null),
		name,
	);
	if (cloth.lining === null) return [face];
	const lining = cloth.lining.name || `lining of ${name}`;
	return [
		face,
		line(
			"lining",
			`lining ${id}`,
			cutting.map((cut) => cut?.liningMetres ?? null),
			lining,
		),
	];
}

/** Along the top of each curtain's flat cloth, its side turnings too (common practice, no source). */
function tape(heading: Heading, hung: readonly CurtainSetOut[], sideTurning: number): Counted {
	const length = hung.reduce((sum, { flatWidth }) => sum + flatWidth + 2 * sideTurning, 0);
	return {
		kind: "heading-tape",
		item: `heading tape ${heading}`,
		system: null,
		quantity: metresUp(length / 1000),
		unit: "m",
		size: null,
		from: [{ of: "curtains", indexes: curtainPlaces(hung) }],
		figures: { heading },
	};
}

function inGroups(all: readonly CurtainSetOut[], keyOf: (given: CurtainSetOut) => string): [string, CurtainSetOut[]][] {
	const groups = new Map<string, CurtainSetOut[]>();
	for (const given of all) {
		const key = keyOf(given);
		const group = groups.get(key);
		if (group === undefined) groups.set(key, [given]);
		else group.push(given);
	}
	return [...groups];
}
