/** One corner as typed: room angle in degrees, lengths mm. */
export interface CardInput {
	readonly angle: number;
	/** Wall face to centre line on the left and on the right wall. */
	readonly left: number;
	readonly right: number;
	readonly radius: number;
	/** From the corner along each wall face to its bracket. */
	readonly bracket: number;
}
