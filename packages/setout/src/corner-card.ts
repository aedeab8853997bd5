import { type CornerBend, cornerBend, type Radians, radians } from "@baywright/geometry";

/** What is known of one odd corner. Lengths mm; the room angle in radians. */
export interface OddCorner {
	readonly angle: Radians;
	/** Wall face to centre line on the left and right wall. */
	readonly left: number;
	readonly right: number;
	/** Bend radius on the centre line. */
	readonly radius: number;
	/** Brackets as far as this from the corner along both walls. */
	readonly brackets: number;
}

/** How one corner is marked out, for a fitter at the wall. Lengths mm. */
export interface CornerCard extends CornerBend {
	/** Along the track between brackets `brackets` from the corner along both walls; null where a bracket would stand on the bend. */
	readonly betweenBrackets: number | null;
	/** The usual rule for a right-angled corner: 490 between brackets 350 either side. */
	readonly rule: typeof RIGHT_ANGLE_RULE;
	/** How much longer the track between brackets at the rule's places is than the rule says; null where a bracket would stand on the bend or the corner is external. */
	readonly overRule: number | null;
}

/** Common practice, no source: brackets 350 mm either side of the corner and 490 mm of track for the sweep between them. */
export const RIGHT_ANGLE_RULE = { brackets: 350, between: 490 } as const;

/** Slack (mm) that lets a bracket stand exactly where the bend starts. */
const SLACK = 1e-6;

/**
 * The figures of one corner, external where its room angle is over 180°.
 * Means something for angles from 20 to 340° other than straight and positive lengths; whoever reads these from a person checks them first.
 */
export function cornerCard({ angle, left, right, radius, brackets }: OddCorner): CornerCard {
	const bend = cornerBend(radians(Math.PI - angle), left, right, radius);
	const at = (from: number) => betweenBrackets(bend, from);
	const atRule = angle < Math.PI ? at(RIGHT_ANGLE_RULE.brackets) : null;
	return {
		...bend,
		betweenBrackets: at(brackets),
		rule: RIGHT_ANGLE_RULE,
		overRule: atRule === null ? null : atRule - RIGHT_ANGLE_RULE.between,
	};
}

function betweenBrackets({ setBack: [left, right], sweep }: CornerBend, from: number): number | null {
	return from < left - SLACK || from < right - SLACK ? null : from - left + sweep + (from - right);
}
