import type { Finding } from "../finding/finding.ts";

/** kg to the tenth; with a minus sign where it lifts. */
export const formatMass = (kg: number): string =>
	kg
		.toFixed(1)
		.replace(/^-0\.0$/, "0.0")
		.replace("-", "−");

/** A load over a limit, in as many digits as it takes to see that it is. */
function formatOver(load: number, limit: number): string {
	if (Number(load.toFixed(1)) > limit) return formatMass(load);
	return Number(load.toFixed(2)) > limit ? load.toFixed(2) : load.toFixed(3);
}

/** A limit as the leaflet has it. */
export const formatLimit = (kg: number): string => String(Number(kg.toFixed(2)));

/** How far the figures go; it stands with every table of loads. */
export const LOADS_SENTENCE =
	"Worked out as a beam over all brackets with the track laid out straight: torsion at bends is left out. The greatest and the least are with each curtain left wherever it loads that bracket most or least.";

export function overloadedSentence({ load, limit, others, system }: Finding["figures"], bracket: string): string {
	const more = saidOfOthers(others, "; one more is over it", `; ${others} more are over it`);
	return `${bracket} carries up to ${formatOver(Number(load), Number(limit))} kg, with the curtains left where they load it most; ${system} allows ${formatLimit(Number(limit))} kg on one bracket${more}. Torsion at bends is left out.`;
}

export function liftSentence({ lift, others }: Finding["figures"], bracket: string): string {
	const more = saidOfOthers(others, ", and so has one more", `, and so have ${others} more`);
	return `${bracket} has to hold the track down with up to ${formatMass(Number(lift))} kg, with the curtains left where they lift it most${more}. A bracket that only bears the track from below lets it rise.`;
}

const saidOfOthers = (others: unknown, one: string, several: string): string =>
	Number(others) === 0 ? "" : Number(others) === 1 ? one : several;

export const notCheckedSentence = ({ load, system }: Finding["figures"], bracket: string): string =>
	`${system} states no greatest load for its brackets, so nothing here says that they hold. ${bracket} carries most, up to ${formatMass(Number(load))} kg: ask what its leaflet allows and enter it.`;

export function massSentence({ count, of, cloth, drop, mass }: Finding["figures"]): string {
	const wants = [
		[cloth, "no cloth is chosen"],
		[drop, "no finished drop is given"],
		[mass, "the cloth or its lining is without its mass"],
	] as const;
	const reasons = wants.filter(([number]) => Number(number) > 0);
	const said = reasons.map(([number, words]) => (reasons.length > 1 ? `for ${number} ${words}` : words)).join(", ");
	const which =
		count === of
			? Number(of) === 1
				? "the curtain weighs"
				: "the curtains weigh"
			: `${count} of the ${of} curtains ${Number(count) === 1 ? "weighs" : "weigh"}`;
	const loads =
		count === of
			? "loads on brackets are not worked out"
			: "loads on brackets are worked out without it: they are greater";
	return `What ${which} is not known (${said}), so ${loads}.`;
}
