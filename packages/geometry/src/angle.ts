declare const unit: unique symbol;

/** An angle or heading in radians. Headings are counter-clockwise from +x. */
export type Radians = number & { readonly [unit]: "radians" };

/** An angle in degrees, as written in files and on screen. */
export type Degrees = number & { readonly [unit]: "degrees" };

export const radians = (value: number): Radians => value as Radians;
export const degrees = (value: number): Degrees => value as Degrees;
export const toRadians = (value: number): Radians => ((value * Math.PI) / 180) as Radians;
export const toDegrees = (value: number): Degrees => ((value * 180) / Math.PI) as Degrees;

/** The same heading in (−π, π]. */
export const wrapHeading = (heading: number): Radians => {
	const turns = Math.ceil((heading - Math.PI) / (2 * Math.PI));
	return (heading - turns * 2 * Math.PI) as Radians;
};
