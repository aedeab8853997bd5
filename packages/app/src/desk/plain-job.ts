import { type Job, parseJob } from "@baywright/setout";

/** A plain square bay to start from: two returns of 700 mm and a front of 1800 mm. */
export function plainJob(): Job {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		title: "New job",
		bays: [
			{
				id: "bay-1",
				name: "Bay",
				corners: [
					[0, 0],
					[0, 700],
					[1800, 700],
					[1800, 0],
				],
				openings: [{ wall: 1, from: 150, to: 1650, sill: 600, head: 2050 }],
				track: { system: "light-corded" },
			},
		],
	});
	if (!parsed.ok) throw new Error("the plain bay is not a valid job");
	return parsed.job;
}
