import type { Region } from "../job/schema.ts";

/**
 * What the rules of one region are read to say of cords. Told, dated and deferred to: nothing here says that anything complies.
 */
export interface CordAdvice {
	/** Where, in words. */
	readonly where: string;
	readonly says: string;
	readonly source: string;
	/** When the source was last looked at. */
	readonly checked: string;
	/** Lowest point of a cord's loop above the floor at the least, mm; null = the source gives none. */
	readonly loopAbove: number | null;
	/** Longest cord in reach, mm; null = the source gives none. */
	readonly longest: number | null;
}

const CHECKED = "27 November 2026";

const OF_STANDARD =
	"A loop that a cord forms has its lowest point at least 1.5 m above the floor, or is kept taut by a tensioner that is fixed to the wall.";

const STANDARD = "read in secondary sources, so buy the standards";

const BY_REGION: Readonly<Record<Exclude<Region, "other">, CordAdvice>> = {
	GB: {
		where: "Great Britain",
		says: OF_STANDARD,
		source: `BS EN 13120, BS EN 16433 and BS EN 16434, ${STANDARD}`,
		checked: CHECKED,
		loopAbove: 1500,
		longest: null,
	},
	EU: {
		where: "the European Union",
		says: OF_STANDARD,
		source: `Decision 2011/477/EU; EN 13120, EN 16433 and EN 16434, ${STANDARD}`,
		checked: CHECKED,
		loopAbove: 1500,
		longest: null,
	},
	IE: {
		where: "Ireland",
		says: "Cords end at least 1.6 m above the floor; where they cannot, a tension device holds them taut to floor or wall. No cot, bed, high chair or playpen stands near, nor anything to climb on.",
		source: "National Standards Authority of Ireland, warning on window blind cords, nsai.ie",
		checked: CHECKED,
		loopAbove: 1600,
		longest: null,
	},
	AU: {
		where: "Australia",
		says: "No loose cord can form a loop of 220 mm or longer at or under 1,600 mm above the floor; a cleat is at least 1,600 mm above it; whoever installs puts a label with name and address on it.",
		source:
			"Competition and Consumer (Corded Internal Window Coverings) Safety Standard 2014, read at nsw.gov.au; check for the standard in force",
		checked: CHECKED,
		loopAbove: 1600,
		longest: null,
	},
	CA: {
		where: "Canada",
		says: "A cord that can be reached is at most 22 cm long, and a loop that it forms at most 44 cm round, when pulled with 35 N. A hanging cord is longer: ask for a system that needs none.",
		source: "Corded Window Coverings Regulations, SOR/2019-97, and Health Canada's guidance on them",
		checked: CHECKED,
		loopAbove: null,
		longest: 220,
	},
	US: {
		where: "the United States",
		says: "An operating cord in reach over 8 in (203 mm) long on a custom window covering is an unreasonable risk. A hanging cord is longer: ask for a system that needs none or that makes its cord safe.",
		source: "16 CFR 1260, Safety Standard for Operating Cords on Custom Window Coverings, 87 FR 73144",
		checked: CHECKED,
		loopAbove: null,
		longest: 203,
	},
};

/** Of all that are listed the strictest: what holds where nobody has said whose rules apply. */
function strictest(): CordAdvice {
	const all = Object.values(BY_REGION);
	const given = (figures: readonly (number | null)[]) => figures.filter((figure) => figure !== null);
	const loopAbove = Math.max(...given(all.map((advice) => advice.loopAbove)));
	const longest = Math.min(...given(all.map((advice) => advice.longest)));
	return {
		where: "other countries",
		says: `No country is chosen that is known here, so the strictest of all that are listed is given: no cord in reach longer than ${longest} mm, no loop with its lowest point under ${loopAbove} mm above the floor. Ask what holds where the track hangs.`,
		source: "the strictest of those listed for Great Britain, the EU, Ireland, Australia, Canada and the United States",
		checked: CHECKED,
		loopAbove,
		longest,
	};
}

const ELSEWHERE = strictest();

export const cordAdvice = (region: Region): CordAdvice => (region === "other" ? ELSEWHERE : BY_REGION[region]);
