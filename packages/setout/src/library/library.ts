import type { Job } from "../job/schema.ts";
import { builtInSystems } from "./built-in.ts";
import { builtInCloths } from "./built-in-cloths.ts";
import type { Cloth } from "./cloth.ts";
import type { Price } from "./price.ts";
import type { Spare } from "./spare.ts";
import type { TrackSystem } from "./system.ts";

/** What a bay is planned with, beside its own measures. */
export interface Library {
	/** The job's own first, then the built-in ones whose id it does not use. */
	readonly systems: readonly TrackSystem[];
	/** In the same order. */
	readonly cloths: readonly Cloth[];
	readonly prices: readonly Price[];
	/** How much of what runs short is ordered on top. */
	readonly spare: Spare;
	/** Whose cautions apply. */
	readonly region: Job["region"];
}

export const libraryOf = (job: Job): Library => ({
	systems: [...job.systems, ...builtInSystems.filter(({ id }) => !job.systems.some((own) => own.id === id))],
	cloths: [...job.cloths, ...builtInCloths.filter(({ id }) => !job.cloths.some((own) => own.id === id))],
	prices: job.prices,
	spare: job.spare,
	region: job.region,
});

/** The system that a job means by this id: its own, else the built-in one. */
export const findSystem = (job: Pick<Job, "systems">, id: string): TrackSystem | undefined =>
	job.systems.find((own) => own.id === id) ?? builtInSystems.find((system) => system.id === id);
